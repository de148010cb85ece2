// Paints the table: each piece in the sizes that are shown, what is selected on top.
import { enter, leave, line } from './canvas.js';
import { inks } from './inks.js';
import { paintName, paintPoints } from './names.js';
import { drawing, names, nearestDrawing } from './pieces.js';
import { paintPin } from './pins.js';
import { drawRulers } from './rulers.js';
import { paintLines, paintLit, paintMarks, paintSize } from './shape.js';

/**
 * Paints everything.
 *
 * view: {camera, width, height, ratio, places, sizes: shown, size: looked at, styles, selected, lit, hover,
 *        stitch, points, pins}
 */
export function paint(context, view) {
  const ink = inks();
  const { camera, width, height } = view;
  leave(context, view);
  context.fillStyle = ink.sheet;
  context.fillRect(0, 0, width, height);
  for (const piece of names()) {
    const place = view.places.get(piece);
    if (place) paintPiece(context, view, ink, piece, place);
  }
  leave(context, view);
  for (const pin of view.pins) paintPin(context, view, ink, pin);
  paintGuides(context, view, ink);
  for (const each of view.overlays) each(context, view, ink);
  leave(context, view);
  drawRulers(context, camera, width, height, zero(view), ink);
}

/** Where the rulers have their zero: the stack point of the selected piece, or the table's corner. */
function zero(view) {
  const piece = view.selected?.piece;
  return (piece && view.places.get(piece)) || [0, 0];
}

function paintPiece(context, view, ink, piece, place) {
  const current = drawing(piece, view.size) ?? nearestDrawing(piece, view.size);
  if (!current) return;
  const px = 1 / view.camera.scale;
  const chosen = view.selected?.piece === piece;
  const nest = view.sizes.length > 1;
  // The piece's cloth, very lightly.
  enter(context, view, place, current);
  const cut = current.parts('cut')[0];
  const body = cut ? current.path(cut) : current.stitchLine();
  context.fillStyle = chosen ? ink.lit : ink.piece;
  context.fill(body);
  for (const size of view.sizes) {
    if (size !== view.size) paintSize(context, view, ink, piece, place, size, px, nest);
  }
  if (drawing(piece, view.size)) paintSize(context, view, ink, piece, place, view.size, px, nest);
  paintMarks(context, view, ink, current, place, px);
  paintLit(context, view, ink, piece, current, place, px);
  paintName(context, view, ink, current, place);
  if (chosen || view.points) {
    paintLines(context, view, ink, current, place, px);
    paintPoints(context, view, ink, piece, current, place);
  }
}

/** Chalk lines to the points with which a dragged one is lined up. */
function paintGuides(context, view, ink) {
  if (!view.guides?.length) return;
  context.strokeStyle = ink.chalk;
  context.lineWidth = 1;
  context.setLineDash([5, 4]);
  for (const { from, to, place } of view.guides) {
    const [x1, y1] = view.camera.toScreen(place[0] + from[0], place[1] + from[1]);
    const [x2, y2] = view.camera.toScreen(place[0] + to[0], place[1] + to[1]);
    line(context, x1, y1, x2, y2);
  }
  context.setLineDash([]);
}
