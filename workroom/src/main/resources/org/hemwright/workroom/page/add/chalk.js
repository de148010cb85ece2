// What is pointed at, as brass pins in their order, and the chalk cross of the keyboard.
import { looked } from '../table/table.js';
import { drawing } from '../table/pieces.js';
import { onScreen } from '../table/canvas.js';

/** Paints the picks of what is being added. */
export function paintPicks(adding, context, view, ink) {
  if (!adding) return;
  context.setTransform(view.ratio, 0, 0, view.ratio, 0, 0);
  const places = adding.picks.map(screen);
  const ghost = adding.ghost && screen(adding.ghost);
  if (places.length > 0) {
    context.strokeStyle = ink.brass;
    context.lineWidth = 1.4;
    context.setLineDash([6, 4]);
    context.beginPath();
    for (const [index, at] of (ghost ? [...places, ghost] : places).entries()) {
      if (index === 0) context.moveTo(...at);
      else context.lineTo(...at);
    }
    context.stroke();
    context.setLineDash([]);
  }
  for (const guide of adding.guides) line(context, view, ink, guide);
  context.font = '600 11px "Hemwright Sans", sans-serif';
  context.textAlign = 'center';
  for (const [index, [x, y]] of places.entries()) {
    disc(context, x, y, 8, ink.brass, ink.sheet);
    context.fillStyle = ink.sheet;
    context.fillText(String(index + 1), x, y + 4);
  }
  context.textAlign = 'left';
  if (ghost) disc(context, ghost[0], ghost[1], 4.5, ink.sheet, ink.brass);
  if (adding.cross) cross(context, ink, adding.cross);
}

function screen(pick) {
  const view = looked();
  const drawn = pick.piece && drawing(pick.piece, view.size);
  const place = view.places.get(pick.piece);
  return drawn && place ? onScreen(view, place, drawn, pick.x, pick.y) : view.camera.toScreen(pick.x, pick.y);
}

function disc(context, x, y, radius, fill, edge) {
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.fillStyle = fill;
  context.fill();
  context.strokeStyle = edge;
  context.lineWidth = 2;
  context.stroke();
}

function line(context, view, ink, { from, to, place }) {
  context.strokeStyle = ink.chalk;
  context.lineWidth = 1;
  context.setLineDash([5, 4]);
  context.beginPath();
  context.moveTo(...view.camera.toScreen(place[0] + from[0], place[1] + from[1]));
  context.lineTo(...view.camera.toScreen(place[0] + to[0], place[1] + to[1]));
  context.stroke();
  context.setLineDash([]);
}

function cross(context, ink, [x, y]) {
  context.strokeStyle = ink.chalk;
  context.lineWidth = 2;
  context.beginPath();
  context.moveTo(x - 12, y);
  context.lineTo(x + 12, y);
  context.moveTo(x, y - 12);
  context.lineTo(x, y + 12);
  context.stroke();
}
