// A laying drawn: the cloth with its fold and its end, and on it the pieces as the server says they lie.
import { draw } from '../dom.js';

const EDGE = 14;
const LARGEST = 42;

/** A piece's own place. Across runs up from the fold; the picture runs down. */
export function placed(shape, told, piece) {
  shape.style.transform = `translate(${piece.along}px, ${told.across - piece.across}px)`;
}

/** A piece as it covers the table, round its own origin. */
export function pieceOf(piece) {
  const corners = cornersOf(piece);
  const xs = corners.map((each) => each[0]);
  const ys = corners.map((each) => each[1]);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const mark = draw('text', { x: (left + right) / 2, y: (top + bottom) / 2 }, piece.mark);
  mark.style.fontSize = `${Math.min(LARGEST, 0.6 * (bottom - top), 0.6 * (right - left))}px`;
  const down = piece.mirrored && piece.layers !== 'on_fold';
  const group = draw('g', { class: `board-piece ${piece.layers}` }, draw('polygon', { points: pointsOf(piece) }));
  if (piece.layers === 'on_fold') group.append(bracket(corners, -top > bottom ? -1 : 1));
  if (down) group.append(draw('polygon', { class: 'face-down', points: pointsOf(piece), fill: 'url(#face-down)' }));
  group.append(grain(piece, right - left, (left + right) / 2, (top + bottom) / 2 - 0.62 * Number.parseFloat(mark.style.fontSize)), mark);
  return group;
}

/** The bracket of a piece on the fold, which is not cut there; its own place lies on that fold. */
function bracket(corners, inward) {
  const xs = corners.filter(([, y]) => Math.abs(y) < 1).map(([x]) => x);
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  const half = Math.min(90, (to - from) / 4);
  const [left, right] = [(from + to) / 2 - half, (from + to) / 2 + half];
  const high = Math.min(26, half) * inward;
  const head = 0.35 * high;
  const tips = [left, right].map((x) => `M${x - 0.4 * Math.abs(head)},${head} L${x},0 L${x + 0.4 * Math.abs(head)},${head}`);
  return draw('path', { class: 'board-bracket', d: `M${left},0 V${high} H${right} V0 ${tips.join(' ')}` });
}

/** The grain: both ends where the cloth may be turned, else the end that points along it. */
function grain(piece, wide, x, y) {
  const half = Math.min(70, 0.3 * wide);
  const head = 0.18 * half;
  const ends = piece.one_way ? [piece.turned ? -1 : 1] : [-1, 1];
  const tips = ends.map((way) => `M${x + way * (half - head)},${y - head * 0.6} L${x + way * half},${y} L${x + way * (half - head)},${y + head * 0.6}`);
  return draw('path', { class: 'board-grain', d: `M${x - half},${y} L${x + half},${y} ${tips.join(' ')}` });
}

function cornersOf(piece) {
  const corners = [];
  for (let i = 0; i < piece.outline.length; i += 2) corners.push([piece.outline[i], -piece.outline[i + 1]]);
  return corners;
}

/** Its outline as the points of a polygon. */
export function pointsOf(piece) {
  return cornersOf(piece).map((each) => each.map((n) => Math.round(n * 10) / 10).join()).join(' ');
}

/** The cloth, `room` mm longer than it is used; its pieces are put in by whoever asks. */
export function clothOf(told, room, label) {
  const long = told.long + room;
  const svg = draw('svg', { viewBox: `${-EDGE} ${-EDGE} ${long + 2 * EDGE} ${told.across + 2 * EDGE}`, class: 'board-cloth', role: 'group', 'aria-label': label });
  const hatch = draw('pattern', { id: 'face-down', width: 16, height: 16, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' }, draw('line', { class: 'face-down-line', x1: 0, x2: 0, y1: 0, y2: 16 }));
  svg.append(draw('defs', {}, hatch), draw('rect', { class: 'board-ground', x: 0, y: 0, width: long, height: told.across }));
  for (const y of folds(told)) svg.append(draw('line', { class: 'board-fold', x1: 0, x2: Math.min(long, told.open_from), y1: y, y2: y }));
  svg.append(draw('line', { class: 'board-end', x1: told.long, x2: told.long, y1: -EDGE, y2: told.across + EDGE }));
  return svg;
}

/** The bars of a striped cloth, faint, over cloth and pieces; those along it end where it is opened out. */
export function barsOf(told, room) {
  const group = draw('g', { class: 'board-bars' });
  const { along, along_from, across, across_from } = told.bars ?? {};
  const long = told.long + room;
  const end = folds(told).length ? Math.min(long, told.open_from) : long;
  for (const x of every(along, along_from, long)) group.append(draw('line', { x1: x, x2: x, y1: 0, y2: told.across }));
  for (const y of every(across, across_from, told.across)) group.append(draw('line', { x1: 0, x2: end, y1: told.across - y, y2: told.across - y }));
  return group;
}

function every(step, from, most) {
  const places = [];
  if (step) for (let at = from - Math.floor(from / step) * step; at <= most; at += step) places.push(at);
  return places;
}

function folds(told) {
  if (told.folded === 'single' || told.folded === 'crosswise') return [];
  return told.folded === 'double' ? [told.across, 0] : [told.across];
}
