// Paints the table: each piece in the sizes that are shown, what is selected on top.
import { drawing, names, nearestDrawing, middle } from './pieces.js';
import { inks, sizeInk } from './inks.js';
import { drawRulers, RULER } from './rulers.js';

const CUT = 0.6;
const STITCH = 0.3;
const SANS = '"Hemwright Sans", sans-serif';

/**
 * Paints everything.
 *
 * view: {camera, width, height, ratio, places, sizes: shown, size: looked at, styles, selected, lit, hover,
 *        stitch, points, pins}
 */
export function paint(context, view) {
  const ink = inks();
  const { camera, width, height, ratio } = view;
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  context.fillStyle = ink.sheet;
  context.fillRect(0, 0, width, height);
  for (const piece of names()) {
    const place = view.places.get(piece);
    if (place) paintPiece(context, view, ink, piece, place);
  }
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  for (const pin of view.pins) paintPin(context, view, ink, pin);
  paintGuides(context, view, ink);
  for (const each of view.overlays) each(context, view, ink);
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  drawRulers(context, camera, width, height, zero(view), ink);
}

/** Where the rulers have their zero: the stack point of the selected piece, or the table's corner. */
function zero(view) {
  const piece = view.selected?.piece;
  return (piece && view.places.get(piece)) || [0, 0];
}

/** Sets the canvas so that the piece's own millimetres may be drawn in it. */
export function enter(context, view, place, drawn) {
  const { camera, ratio } = view;
  const s = camera.scale * ratio;
  const x = place[0] - drawn.stackX;
  const y = place[1] - drawn.stackY;
  context.setTransform(s, 0, 0, -s, (x - camera.x) * s, (camera.y - y) * s);
}

/** A place of the piece on the canvas, in its pixels. */
export function onScreen(view, place, drawn, x, y) {
  return view.camera.toScreen(place[0] - drawn.stackX + x, place[1] - drawn.stackY + y);
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
  if (chosen || view.points) paintLines(context, view, ink, current, place, px);
  if (chosen || view.points) paintPoints(context, view, ink, piece, current, place);
}

function paintSize(context, view, ink, piece, place, size, px, nest) {
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

function paintMarks(context, view, ink, drawn, place, px) {
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
function paintLines(context, view, ink, drawn, place, px) {
  enter(context, view, place, drawn);
  context.strokeStyle = ink.soft;
  context.lineWidth = Math.max(0.2, px * 0.8);
  context.setLineDash([1.5 * px, 3 * px]);
  for (const part of drawn.parts('path')) context.stroke(drawn.path(part));
  context.setLineDash([]);
}

function cross(context, x, y, size) {
  context.beginPath();
  context.moveTo(x - size, y);
  context.lineTo(x + size, y);
  context.moveTo(x, y - size);
  context.lineTo(x, y + size);
  context.stroke();
}

function arrow(context, n, at, head, ink) {
  const [x1, y1, x2, y2] = n.subarray(at, at + 4);
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  const ux = (x2 - x1) / length;
  const uy = (y2 - y1) / length;
  context.beginPath();
  context.moveTo(x1, y1);
  context.lineTo(x2, y2);
  context.stroke();
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

/** What is selected, what is sewn to it, and what lies under the pointer. */
function paintLit(context, view, ink, piece, drawn, place, px) {
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

function paintName(context, view, ink, drawn, place) {
  const n = drawn.numbers;
  const wide = (n[4] - n[2]) * view.camera.scale;
  if (wide < 34) return;
  const [x, y] = onScreen(view, place, drawn, (n[2] + n[4]) / 2, (n[3] + n[5]) / 2);
  context.setTransform(view.ratio, 0, 0, view.ratio, 0, 0);
  context.textAlign = 'center';
  context.font = `600 14px ${SANS}`;
  const lines = broken(context, drawn.structure.title, Math.max(60, wide * 0.8));
  let down = y - 9 * lines.length;
  context.lineWidth = 4;
  context.lineJoin = 'round';
  context.strokeStyle = view.selected?.piece === drawn.structure.piece ? ink.lit : ink.piece;
  context.fillStyle = ink.ink;
  for (const line of [String(drawn.structure.number), ...lines]) {
    context.strokeText(line, x, down);
    context.fillText(line, x, down);
    context.font = `13.5px ${SANS}`;
    down += 17;
  }
  context.textAlign = 'left';
  if (view.selected?.piece === drawn.structure.piece) nameEdges(context, view, ink, drawn, place);
}

function nameEdges(context, view, ink, drawn, place) {
  context.font = `12.5px ${SANS}`;
  context.textAlign = 'center';
  const taken = [];
  for (const edge of drawn.parts('edge')) {
    const [x, y] = onScreen(view, place, drawn, ...middle(drawn, edge));
    const name = edge.name.replaceAll('_', ' ');
    const half = context.measureText(name).width / 2 + 4;
    if (taken.some(([a, b, c]) => Math.abs(a - x) < c + half && Math.abs(b - y) < 16)) continue;
    taken.push([x, y, half]);
    context.lineWidth = 5;
    context.strokeStyle = ink.sheet;
    context.strokeText(name, x, y - 6);
    context.fillStyle = view.selected?.name === edge.name && view.selected.kind === 'edge' ? ink.chalk : ink.soft;
    context.fillText(name, x, y - 6);
  }
  context.textAlign = 'left';
}

function broken(context, text, room) {
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

function paintPoints(context, view, ink, piece, drawn, place) {
  context.setTransform(view.ratio, 0, 0, view.ratio, 0, 0);
  const selected = view.selected;
  const hover = view.hover;
  for (const kind of ['point', 'notch']) {
    for (const part of drawn.parts(kind)) {
      const [x, y] = onScreen(view, place, drawn, drawn.numbers[part.at], drawn.numbers[part.at + 1]);
      const is = (thing) => thing?.kind === kind && thing.name === part.name && thing.piece === piece;
      const big = is(selected) || is(hover);
      context.beginPath();
      if (kind === 'point') context.arc(x, y, big ? 6 : 3.4, 0, 2 * Math.PI);
      else context.rect(x - (big ? 5 : 3), y - (big ? 5 : 3), big ? 10 : 6, big ? 10 : 6);
      context.fillStyle = is(selected) ? ink.chalk : ink.lift;
      context.fill();
      context.strokeStyle = big ? ink.chalk : ink.soft;
      context.lineWidth = big ? 2 : 1.2;
      context.stroke();
      if (kind === 'point' && (is(selected) || is(hover))) {
        context.font = `13px ${SANS}`;
        context.lineWidth = 5;
        context.strokeStyle = ink.sheet;
        const name = part.name.replaceAll('_', ' ');
        context.strokeText(name, x + 10, y - 8);
        context.fillStyle = ink.chalk;
        context.fillText(name, x + 10, y - 8);
      }
    }
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
    context.beginPath();
    context.moveTo(x1, y1);
    context.lineTo(x2, y2);
    context.stroke();
  }
  context.setLineDash([]);
}

function paintPin(context, view, ink, pin) {
  const place = view.places.get(pin.piece);
  const drawn = drawing(pin.piece, view.size) ?? nearestDrawing(pin.piece, view.size);
  if (!place || !drawn) return;
  const [x, y] = onScreen(view, place, drawn, pin.x, pin.y);
  const colour = pin.status === 'fail' ? ink.red : pin.status === 'accepted' ? ink.soft : ink.rust;
  context.strokeStyle = colour;
  context.fillStyle = ink.lift;
  context.lineWidth = 2;
  context.beginPath();
  context.moveTo(x, y);
  context.lineTo(x + 7, y - 13);
  context.stroke();
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

export { RULER };
