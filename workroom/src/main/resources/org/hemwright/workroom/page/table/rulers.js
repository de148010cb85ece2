// Rulers along two edges of the table: centimetres along the top, inches down the left.

export const RULER = 22;
const INCH = 25.4;

/** Draws both, zero at the corner of what is looked at. */
export function drawRulers(context, camera, width, height, zero, ink) {
  context.save();
  context.fillStyle = ink.paper;
  context.fillRect(0, 0, width, RULER);
  context.fillRect(0, 0, RULER, height);
  context.strokeStyle = ink.rule;
  context.lineWidth = 1;
  context.beginPath();
  context.moveTo(0, RULER + 0.5);
  context.lineTo(width, RULER + 0.5);
  context.moveTo(RULER + 0.5, 0);
  context.lineTo(RULER + 0.5, height);
  context.stroke();
  context.font = '11px "Hemwright Sans", sans-serif';
  context.fillStyle = ink.soft;
  context.strokeStyle = ink.strong;
  along(context, camera.scale * 10, [1, 5, 10, 50, 100], (step, unit, small) => {
    const from = Math.floor(camera.toTable(RULER, 0)[0] - zero[0]) / 10;
    const to = (camera.toTable(width, 0)[0] - zero[0]) / 10;
    for (let cm = Math.ceil(from / small) * small; cm <= to; cm += small) {
      const px = Math.round(camera.toScreen(zero[0] + cm * 10, 0)[0]) + 0.5;
      if (px < RULER) continue;
      const big = Math.abs(cm / step - Math.round(cm / step)) < 1e-6;
      tick(context, px, RULER, px, RULER - (big ? 8 : 4));
      if (big) context.fillText(String(Math.round(cm)), px + 3, 11);
    }
  });
  along(context, camera.scale * INCH, [1, 2, 5, 10, 20, 50], (step, unit, small) => {
    const from = (zero[1] - camera.toTable(0, RULER)[1]) / INCH;
    const to = (zero[1] - camera.toTable(0, height)[1]) / INCH;
    for (let inch = Math.ceil(from / small) * small; inch <= to; inch += small) {
      const py = Math.round(camera.toScreen(0, zero[1] - inch * INCH)[1]) + 0.5;
      if (py < RULER) continue;
      const big = Math.abs(inch / step - Math.round(inch / step)) < 1e-6;
      tick(context, RULER, py, RULER - (big ? 8 : 4), py);
      if (big) context.fillText(String(Math.round(inch)), 2, py - 3);
    }
  });
  context.fillStyle = ink.paper;
  context.fillRect(0, 0, RULER, RULER);
  context.fillStyle = ink.soft;
  context.font = '9.5px "Hemwright Sans", sans-serif';
  context.fillText('cm', 9, 9);
  context.fillText('in', 2, 20);
  context.restore();
}

/** The step at which labels stand at least 46 pixels apart, and the small step between. */
function along(context, unit, steps, each) {
  const step = steps.find((some) => some * unit >= 46) ?? steps[steps.length - 1];
  const small = step * unit >= 90 ? step / 10 : step * unit >= 46 ? step / 5 : step;
  each(step, unit, small);
}

function tick(context, x1, y1, x2, y2) {
  context.beginPath();
  context.moveTo(x1, y1);
  context.lineTo(x2, y2);
  context.stroke();
}
