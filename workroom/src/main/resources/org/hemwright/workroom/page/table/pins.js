// The pin of a finding, on the piece that it is about.
import { line, onScreen, SANS } from './canvas.js';
import { drawing, nearestDrawing } from './pieces.js';

/** A pin with its number: a triangle where a check fails, else a disc. */
export function paintPin(context, view, ink, pin) {
  const place = view.places.get(pin.piece);
  const drawn = drawing(pin.piece, view.size) ?? nearestDrawing(pin.piece, view.size);
  if (!place || !drawn) return;
  const [x, y] = onScreen(view, place, drawn, pin.x, pin.y);
  const colour = pin.status === 'fail' ? ink.red : pin.status === 'accepted' ? ink.soft : ink.rust;
  context.strokeStyle = colour;
  context.fillStyle = ink.lift;
  context.lineWidth = 2;
  line(context, x, y, x + 7, y - 13);
  context.beginPath();
  if (pin.status === 'fail') {
    context.moveTo(x + 10, y - 27);
    context.lineTo(x + 19, y - 12);
    context.lineTo(x + 1, y - 12);
    context.closePath();
  } else {
    context.arc(x + 10, y - 19, 7.5, 0, 2 * Math.PI);
  }
  context.fill();
  context.stroke();
  context.fillStyle = colour;
  context.font = `600 11px ${SANS}`;
  context.textAlign = 'center';
  context.fillText(String(pin.number), x + 10, y - 15);
  context.textAlign = 'left';
}
