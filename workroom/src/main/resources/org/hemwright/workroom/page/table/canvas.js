// What is put on the table's canvas again and again: places, strokes, arrows, words.

export const SANS = '"Hemwright Sans", sans-serif';

/** Sets the canvas so that the piece's own millimetres may be drawn in it. */
export function enter(context, view, place, drawn) {
  const { camera, ratio } = view;
  const s = camera.scale * ratio;
  const x = place[0] - drawn.stackX;
  const y = place[1] - drawn.stackY;
  context.setTransform(s, 0, 0, -s, (x - camera.x) * s, (camera.y - y) * s);
}

/** Sets the canvas so that its own pixels may be drawn in it. */
export function leave(context, view) {
  context.setTransform(view.ratio, 0, 0, view.ratio, 0, 0);
}

/** A place of the piece on the canvas, in its pixels. */
export function onScreen(view, place, drawn, x, y) {
  return view.camera.toScreen(place[0] - drawn.stackX + x, place[1] - drawn.stackY + y);
}

/** A straight stroke. */
export function line(context, x1, y1, x2, y2) {
  context.beginPath();
  context.moveTo(x1, y1);
  context.lineTo(x2, y2);
  context.stroke();
}

/** A cross, its arms of a size. */
export function cross(context, x, y, size) {
  context.beginPath();
  context.moveTo(x - size, y);
  context.lineTo(x + size, y);
  context.moveTo(x, y - size);
  context.lineTo(x, y + size);
  context.stroke();
}

/** An arrow with a head at both ends; its two ends stand among the numbers at a place. */
export function arrow(context, n, at, head, ink) {
  const [x1, y1, x2, y2] = n.subarray(at, at + 4);
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  const ux = (x2 - x1) / length;
  const uy = (y2 - y1) / length;
  line(context, x1, y1, x2, y2);
  context.fillStyle = ink.soft;
  for (const [x, y, way] of [[x2, y2, 1], [x1, y1, -1]]) {
    context.beginPath();
    context.moveTo(x, y);
    context.lineTo(x - way * ux * head - uy * head * 0.32, y - way * uy * head + ux * head * 0.32);
    context.lineTo(x - way * ux * head + uy * head * 0.32, y - way * uy * head - ux * head * 0.32);
    context.closePath();
    context.fill();
  }
}

/** Words on a ground of their own, so that lines beneath do not cross them. */
export function words(context, text, x, y, { colour, ground, wide }) {
  context.lineWidth = wide;
  context.strokeStyle = ground;
  context.strokeText(text, x, y);
  context.fillStyle = colour;
  context.fillText(text, x, y);
}

/** A text broken into lines that fit into so many pixels. */
export function broken(context, text, room) {
  const lines = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line ? `${line} ${word}` : word;
    if (line && context.measureText(longer).width > room) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  lines.push(line);
  return lines;
}

/** A name of the document as it is shown. */
export function shownName(name) {
  return name.replaceAll('_', ' ');
}
