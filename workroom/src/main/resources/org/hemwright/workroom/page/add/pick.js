// What is pointed at, told as a pick: a point, a place of a line, a piece, or a place where nothing lies.
import { get } from '../state.js';
import { looked, thingUnder } from '../table/table.js';
import { drawing } from '../table/pieces.js';
import { onScreen } from '../table/canvas.js';
import { snapped } from '../table/snap.js';

const LINES = ['edge', 'path', 'inner', 'placement'];

/** The pick under a place of the canvas, with where it lies in its piece; nothing where it can be no pick. */
export function pickAt(px, py, event, adding) {
  const view = looked();
  const first = adding.picks[0];
  const thing = thingUnder(px, py);
  const onPlaces = adding.what === 'piece' && first?.kind === 'place';
  if (thing && !onPlaces) {
    const pick = pickOf(thing, adding, own(thing.piece, px, py));
    if (pick) return pick;
  }
  if (['seam', 'notch', 'measure', 'view'].includes(adding.what)) return null;
  if (adding.what === 'piece') {
    if (first && first.kind !== 'place') return null;
    const [x, y] = view.camera.toTable(px, py);
    return { kind: 'place', piece: '', name: '', x, y };
  }
  const piece = first?.piece || thing?.piece || get('selected')?.piece;
  const drawn = piece && drawing(piece, view.size);
  if (!drawn) return null;
  return placed(piece, drawn, own(piece, px, py), event, adding);
}

function own(piece, px, py) {
  const view = looked();
  const drawn = drawing(piece, view.size);
  const place = view.places.get(piece);
  if (!drawn || !place) return [0, 0];
  const [x, y] = view.camera.toTable(px, py);
  return [x - place[0] + drawn.stackX, y - place[1] + drawn.stackY];
}

/** A place, square to the last pick with Shift, else lined up with points that are near; Alt leaves it free. */
function placed(piece, drawn, at, event, adding) {
  const last = adding.picks[adding.picks.length - 1];
  if (event?.shiftKey && last) {
    const across = Math.abs(at[0] - last.x) > Math.abs(at[1] - last.y);
    return { kind: 'place', piece, name: '', x: across ? at[0] : last.x, y: across ? last.y : at[1] };
  }
  const view = looked();
  const place = view.places.get(piece);
  const drag = { thing: { kind: 'point', name: '' }, drawn };
  const { goal, guides } = snapped(at, drag, view, event?.altKey);
  const shift = [place[0] - drawn.stackX, place[1] - drawn.stackY];
  return { kind: 'place', piece, name: '', x: goal[0], y: goal[1], guides: guides.map((guide) => ({ ...guide, place: shift })) };
}

/** A thing that has a name, as a pick; nothing where this kind of thing is not asked for. */
export function pickOf(thing, adding, at = null) {
  const drawn = drawing(thing.piece, looked().size);
  if (!drawn) return null;
  if (adding.what === 'view') return { kind: 'piece', piece: thing.piece, name: '', ...middleOf(drawn) };
  const edgesOnly = adding.what === 'seam';
  if (thing.kind === 'piece') {
    return adding.what === 'piece' && at === null ? { kind: 'piece', piece: thing.piece, name: '', ...middleOf(drawn) }
      : adding.what === 'piece' ? { kind: 'piece', piece: thing.piece, name: '', x: at[0], y: at[1] } : null;
  }
  const part = drawn.part(thing.kind, thing.name);
  if (!part) return null;
  const n = drawn.numbers;
  if (thing.kind === 'point') {
    return edgesOnly || adding.what === 'piece' ? null : { kind: 'point', piece: thing.piece, name: thing.name, x: n[part.at], y: n[part.at + 1] };
  }
  if (thing.kind === 'notch') return edgesOnly ? { kind: 'line', piece: thing.piece, name: part.edge, x: n[part.at], y: n[part.at + 1] } : null;
  if (!LINES.includes(thing.kind) || (edgesOnly && thing.kind !== 'edge')) return null;
  const last = part.at + 2 + 6 * (part.curves - 1) + 4;
  const [x, y] = at ?? (part.curves > 1 ? [n[part.at + 6], n[part.at + 7]] : [(n[part.at] + n[last]) / 2, (n[part.at + 1] + n[last + 1]) / 2]);
  return { kind: 'line', piece: thing.piece, name: thing.name, x, y };
}

function middleOf(drawn) {
  const n = drawn.numbers;
  return { x: (n[2] + n[4]) / 2, y: (n[3] + n[5]) / 2 };
}

/** Where a pick is on the canvas. */
export function placeOnTable(pick) {
  const view = looked();
  const drawn = pick.piece && drawing(pick.piece, view.size);
  const place = view.places.get(pick.piece);
  return drawn && place ? onScreen(view, place, drawn, pick.x, pick.y) : view.camera.toScreen(pick.x, pick.y);
}
