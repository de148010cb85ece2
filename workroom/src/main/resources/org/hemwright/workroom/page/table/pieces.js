// The pieces as they were told: for each piece and size a structure and its numbers, and the paths made of them.
import { hear } from '../line.js';
import { get, put } from '../state.js';

let structures = [];
let pieces = new Map();
let order = [];
let changed = () => {};

/** Calls back whenever what lies on the table changes. */
export function whenPiecesChange(callback) {
  changed = callback;
}

/** The names of the pieces, in the order of the document. */
export function names() {
  return order;
}

/** A piece in a size; nothing where it is not drawn in it. */
export function drawing(piece, size) {
  return pieces.get(piece)?.[size] ?? null;
}

/** Some drawing of a piece, in the size nearest to one. */
export function nearestDrawing(piece, size) {
  const all = pieces.get(piece) ?? [];
  let best = null;
  all.forEach((each, at) => {
    if (each && (best === null || Math.abs(at - size) < Math.abs(best - size))) best = at;
  });
  return best === null ? null : all[best];
}

/** The box round a piece in all its sizes, seen from its stack point: [x, y, x, y]. */
export function reach(piece) {
  const box = [Infinity, Infinity, -Infinity, -Infinity];
  for (const each of pieces.get(piece) ?? []) {
    if (!each) continue;
    const n = each.numbers;
    box[0] = Math.min(box[0], n[2] - n[0]);
    box[1] = Math.min(box[1], n[3] - n[1]);
    box[2] = Math.max(box[2], n[4] - n[0]);
    box[3] = Math.max(box[3], n[5] - n[1]);
  }
  return box;
}

hear('hello', () => { structures = []; pieces = new Map(); });

hear('pieces', take);

/** Takes what changed on the table, as `pieces` tells it, or an answer that brings it. */
export function take(head) {
  for (const told of head.structures) structures.push(laidOut(told));
  for (const [piece, size] of head.gone) if (pieces.has(piece)) pieces.get(piece)[size] = null;
  let at = 0;
  for (const [structure, size, length] of head.drawings) {
    const shape = structures[structure];
    if (!pieces.has(shape.piece)) pieces.set(shape.piece, []);
    pieces.get(shape.piece)[size] = new Drawing(shape, size, head.numbers.subarray(at, at + length));
    at += length;
  }
  const news = { pieces: head.revision };
  if (head.order) {
    order = head.order;
    for (const name of [...pieces.keys()]) if (!order.includes(name)) pieces.delete(name);
  }
  if (head.sizes && head.sizes.join('\n') !== get('sizes').join('\n')) {
    const base = Math.max(0, head.base ?? 0);
    Object.assign(news, { sizes: head.sizes, base, size: base, from: base, to: base, styles: head.styles });
  }
  put(news);
  changed();
}

/** Drawings that were told beside those on the table, by the names of their pieces. */
export function drawingsOf(head) {
  const shapes = head.structures.map(laidOut);
  const found = new Map();
  let at = 0;
  for (const [structure, size, length] of head.drawings) {
    found.set(shapes[structure].piece, new Drawing(shapes[structure], size, head.numbers.subarray(at, at + length)));
    at += length;
  }
  return found;
}

/** Finds for each part of a structure where its numbers start. */
function laidOut(structure) {
  let at = 6;
  for (const part of structure.parts) {
    part.at = at;
    if (part.curves !== undefined) at += 2 + 6 * part.curves;
    else if (part.kind === 'notch') at += 2 + 4 * part.ticks;
    else if (part.kind === 'grain') at += 4;
    else at += 2;
  }
  return structure;
}

/** One piece in one size. */
class Drawing {
  constructor(structure, size, numbers) {
    this.structure = structure;
    this.size = size;
    this.numbers = numbers;
    this.made = new Map();
  }

  get stackX() { return this.numbers[0]; }
  get stackY() { return this.numbers[1]; }

  /** The path of a part. */
  path(part) {
    let path = this.made.get(part);
    if (!path) {
      path = new Path2D();
      trace(path, this.numbers, part, true);
      this.made.set(part, path);
    }
    return path;
  }

  /** All edges end to end: the stitch line, closed. */
  stitchLine() {
    let path = this.made.get('stitch');
    if (!path) {
      path = new Path2D();
      let first = true;
      for (const part of this.structure.parts) {
        if (part.kind !== 'edge') continue;
        trace(path, this.numbers, part, first);
        first = false;
      }
      path.closePath();
      this.made.set('stitch', path);
    }
    return path;
  }

  /** The parts of a kind. */
  parts(kind) {
    return this.structure.parts.filter((part) => part.kind === kind);
  }

  /** The part of a kind and name. */
  part(kind, name) {
    return this.structure.parts.find((part) => part.kind === kind && part.name === name) ?? null;
  }
}

function trace(path, n, part, starts) {
  let at = part.at;
  if (starts) path.moveTo(n[at], n[at + 1]);
  at += 2;
  for (let i = 0; i < part.curves; i++, at += 6) {
    if (Number.isNaN(n[at])) path.lineTo(n[at + 4], n[at + 5]);
    else path.bezierCurveTo(n[at], n[at + 1], n[at + 2], n[at + 3], n[at + 4], n[at + 5]);
  }
  if (part.kind === 'cut') path.closePath();
}

/** The middle of a path's numbers, near enough to set a word beside. */
export function middle(drawing, part) {
  const n = drawing.numbers;
  if (part.curves === undefined) return [n[part.at], n[part.at + 1]];
  if (part.curves > 1) {
    const at = part.at + 2 + 6 * (Math.floor(part.curves / 2) - 1) + 4;
    return [n[at], n[at + 1]];
  }
  const at = part.at;
  if (Number.isNaN(n[at + 2])) return [(n[at] + n[at + 6]) / 2, (n[at + 1] + n[at + 7]) / 2];
  return [0, 1].map((i) => (n[at + i] + 3 * n[at + 2 + i] + 3 * n[at + 4 + i] + n[at + 6 + i]) / 8);
}
