// What lies under a place of the table.
import { drawing, names, nearestDrawing } from './pieces.js';
import { enter, onScreen } from './canvas.js';

const NEAR = 9;

/** The thing under a place of the canvas, points before notches before lines before pieces. */
export function thingAt(context, view, px, py, near = NEAR) {
  let best = null;
  for (const piece of [...names()].reverse()) {
    const place = view.places.get(piece);
    const drawn = drawing(piece, view.size) ?? nearestDrawing(piece, view.size);
    if (!place || !drawn) continue;
    const handles = view.selected?.piece === piece || view.points ? ['point', 'notch'] : ['notch'];
    for (const kind of handles) {
      for (const part of drawn.parts(kind)) {
        const [x, y] = onScreen(view, place, drawn, drawn.numbers[part.at], drawn.numbers[part.at + 1]);
        const far = Math.hypot(x - px, y - py);
        if (far <= near && (!best || far < best.far)) best = { kind, piece, name: part.name, far };
      }
    }
    if (best) continue;
    enter(context, view, place, drawn);
    context.lineWidth = (2 * near) / view.camera.scale;
    const [dx, dy] = [px * view.ratio, py * view.ratio];
    const lines = view.selected?.piece === piece || view.points ? ['edge', 'inner', 'placement', 'path'] : ['edge', 'inner', 'placement'];
    for (const kind of lines) {
      for (const part of drawn.parts(kind)) {
        if (context.isPointInStroke(drawn.path(part), dx, dy)) return { kind, piece, name: part.name };
      }
    }
    const cut = drawn.parts('cut')[0];
    if (context.isPointInPath(cut ? drawn.path(cut) : drawn.stitchLine(), dx, dy)) {
      return { kind: 'piece', piece, name: piece };
    }
  }
  return best && { kind: best.kind, piece: best.piece, name: best.name };
}

/** The finding whose pin lies under a place of the canvas. */
export function pinAt(view, px, py) {
  for (const pin of view.pins) {
    const place = view.places.get(pin.piece);
    const drawn = drawing(pin.piece, view.size) ?? nearestDrawing(pin.piece, view.size);
    if (!place || !drawn) continue;
    const [x, y] = onScreen(view, place, drawn, pin.x, pin.y);
    if (Math.hypot(x + 10 - px, y - 18 - py) < 11) return pin;
  }
  return null;
}
