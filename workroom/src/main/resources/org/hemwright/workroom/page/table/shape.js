// A piece's own lines: its cut and stitch lines in a size, its marks, its draft, what of it is lit.
import { arrow, cross, enter } from './canvas.js';
import { sizeInk } from './inks.js';
import { drawing } from './pieces.js';

const CUT = 0.6;
const STITCH = 0.3;

/** The piece in one size: the one that is looked at in full, others of the nest more lightly. */
export function paintSize(context, view, ink, piece, place, size, px, nest) {
  const drawn = drawing(piece, size);
  if (!drawn) return;
  const current = size === view.size;
  enter(context, view, place, drawn);
  const style = view.styles[size];
  const colour = nest && style ? sizeInk(style.ink) : ink.ink;
  context.strokeStyle = colour;
  context.lineJoin = 'round';
  const cut = drawn.parts('cut')[0];
  if (cut) {
    context.lineWidth = Math.max(CUT * (current ? 1 : 0.6), px * (current ? 1.5 : 0.8));
    context.setLineDash(nest && style && !current ? style.dashes.map((d) => Math.max(d, px * d)) : []);
    context.stroke(drawn.path(cut));
  }
  if (current && (view.stitch || !cut)) {
    context.lineWidth = Math.max(STITCH, px * 0.9);
    const dash = Math.max(2.4, 5 * px);
    context.setLineDash([dash, dash * 0.7]);
    context.strokeStyle = ink.soft;
    context.stroke(drawn.stitchLine());
    context.setLineDash([]);
    context.lineWidth = Math.max(STITCH, px);
    context.strokeStyle = colour;
    for (const edge of drawn.parts('edge')) {
      if (edge.fold) {
        context.setLineDash([dash * 2.5, dash, dash * 0.5, dash]);
        context.stroke(drawn.path(edge));
      }
    }
  }
  context.setLineDash([]);
}

/** Notches, lines drawn on the piece, drill holes and grain. */
export function paintMarks(context, view, ink, drawn, place, px) {
  enter(context, view, place, drawn);
  const n = drawn.numbers;
  context.strokeStyle = ink.ink;
  context.lineWidth = Math.max(0.4, px * 1.2);
  context.beginPath();
  for (const notch of drawn.parts('notch')) {
    for (let i = 0, at = notch.at + 2; i < notch.ticks; i++, at += 4) {
      context.moveTo(n[at], n[at + 1]);
      context.lineTo(n[at + 2], n[at + 3]);
    }
  }
  context.stroke();
  context.lineWidth = Math.max(0.25, px * 0.8);
  context.strokeStyle = ink.soft;
  for (const kind of ['inner', 'placement', 'turn']) {
    const dash = Math.max(2, 4 * px);
    context.setLineDash(kind === 'turn' ? [dash, dash] : kind === 'placement' ? [dash * 2, dash] : []);
    for (const part of drawn.parts(kind)) context.stroke(drawn.path(part));
  }
  context.setLineDash([]);
  for (const part of drawn.parts('lengthen')) {
    const dash = Math.max(3, 6 * px);
    context.setLineDash([dash * 2, dash]);
    context.stroke(drawn.path(part));
    context.setLineDash([]);
  }
  for (const part of drawn.parts('drill')) cross(context, n[part.at], n[part.at + 1], Math.max(2, 4 * px));
  for (const part of drawn.parts('grain')) arrow(context, n, part.at, Math.max(3, 7 * px), ink);
}

/** Lines and curves of the draft that are no edge, or of which edges are made. */
export function paintLines(context, view, ink, drawn, place, px) {
  enter(context, view, place, drawn);
  context.strokeStyle = ink.soft;
  context.lineWidth = Math.max(0.2, px * 0.8);
  context.setLineDash([1.5 * px, 3 * px]);
  for (const part of drawn.parts('path')) context.stroke(drawn.path(part));
  context.setLineDash([]);
}

/** What is selected, what is sewn to it, and what lies under the pointer. */
export function paintLit(context, view, ink, piece, drawn, place, px) {
  enter(context, view, place, drawn);
  const strokes = [];
  for (const lit of view.lit) if (lit.piece === piece) strokes.push([lit, ink.brass, 3]);
  if (view.hover?.piece === piece) strokes.push([view.hover, ink.chalk, 2]);
  if (view.selected?.piece === piece) strokes.push([view.selected, ink.chalk, 3.4]);
  context.lineCap = 'round';
  for (const [thing, colour, wide] of strokes) {
    if (thing.kind === 'piece') continue;
    const part = drawn.part(thing.kind, thing.name);
    if (!part || part.curves === undefined) continue;
    context.strokeStyle = colour;
    context.lineWidth = wide * px;
    context.stroke(drawn.path(part));
  }
  context.lineCap = 'butt';
}
