// The board: a laying whose pieces are moved by hand. The server says where a piece may lie; here it is only drawn.
import { draw, fill, make, set } from '../dom.js';
import { ask, hear } from '../line.js';
import { CLOTH } from '../words/cloth.js';

const EDGE = 14;
const STEP = 10;

let row = -1;
let told = null;
let first = 0;
let place = null;
let said = '';
let toSay = '';
let waiting = false;
let focused = -1;

hear('shifted', (head) => {
  waiting = false;
  if (!place) return;
  const piece = head.pieces[head.at];
  const moved = told.pieces.some((each, at) => each.along !== head.pieces[at].along || each.across !== head.pieces[at].across || each.turned !== head.pieces[at].turned);
  said = head.objection ? `${CLOTH.why[head.objection](piece.name, head.on)} ${moved ? CLOTH.near : CLOTH.stays}` : '';
  told = { ...told, ...head };
  paint();
});

/** The board of a row of the table. */
export function board(at) {
  const known = place && row === at;
  row = at;
  if (known) return place;
  place = make('div', { class: 'board' });
  said = toSay;
  toSay = '';
  const mine = place;
  ask('board', { row }).then((head) => {
    if (mine !== place) return;
    told = head;
    first = head.taken;
    paint();
  }, () => {});
  return place;
}

/** Forgets what was moved and not kept. */
export function leaveBoard() {
  place = null;
  told = null;
  row = -1;
  waiting = false;
}

const places = () => told.pieces.map(({ item, copy, turned, mirrored, along, across }) => ({ item, copy, turned, mirrored, along, across }));

function shift(at, fields) {
  if (waiting) return;
  waiting = true;
  ask('shift', { row, places: places(), at, ...fields }).catch(() => { waiting = false; paint(); });
}

async function keep() {
  try {
    const { kept } = await ask('keep_laying', { row, places: places() });
    said = kept ? CLOTH.kept : CLOTH.refused;
    if (kept) toSay = said;
  } catch (reason) {
    said = reason.message;
  }
  if (place) paint();
}

function paint() {
  const long = told.long + 60;
  const svg = draw('svg', { viewBox: `${-EDGE} ${-EDGE} ${long + 2 * EDGE} ${told.across + 2 * EDGE}`, class: 'board-cloth', role: 'group', 'aria-label': CLOTH.board });
  svg.append(draw('rect', { class: 'board-ground', x: 0, y: 0, width: long, height: told.across }));
  if (told.folded !== 'single' && told.folded !== 'crosswise') svg.append(draw('line', { class: 'board-fold', x1: 0, x2: Math.min(long, told.open_from), y1: told.across, y2: told.across }));
  svg.append(draw('line', { class: 'board-end', x1: told.long, x2: told.long, y1: -EDGE, y2: told.across + EDGE }));
  const pieces = told.pieces.map((piece, at) => group(piece, at, svg));
  svg.append(...pieces);
  const more = told.taken - first;
  fill(place, make('p', { class: 'soft' }, CLOTH.hint2), svg,
      make('p', { class: 'board-takes' }, set(CLOTH.takes(told.length, told.density)), ' ', CLOTH.saves(more)),
      make('p', { role: 'status', class: 'board-said' }, said),
      make('button', { type: 'button', class: 'chief', onclick: keep }, CLOTH.keep));
  if (focused >= 0) pieces[focused]?.focus();
}

/** Across runs up from the fold; the picture runs down. */
const shown = (piece) => `translate(${piece.along}px, ${told.across - piece.across}px)`;

function group(piece, at, svg) {
  const corners = [];
  const n = piece.outline;
  for (let i = 0; i < n.length; i += 2) corners.push([n[i], -n[i + 1]]);
  const [x, y] = middle(corners);
  const shape = draw('g', { class: `board-piece ${piece.layers}`, tabindex: 0, role: 'button', 'aria-label': CLOTH.piece(piece) },
      draw('polygon', { points: corners.map((each) => each.join()).join(' ') }), draw('text', { x, y }, piece.mark));
  shape.style.transform = shown(piece);
  shape.addEventListener('focus', () => { focused = at; });
  shape.addEventListener('blur', () => { if (focused === at && document.activeElement !== shape && place?.contains(document.activeElement)) focused = -1; });
  shape.addEventListener('keydown', (event) => keys(event, piece, at));
  shape.addEventListener('pointerdown', (event) => drag(event, piece, at, shape, svg));
  return shape;
}

function middle(corners) {
  const xs = corners.map((each) => each[0]);
  const ys = corners.map((each) => each[1]);
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}

function keys(event, piece, at) {
  const by = event.shiftKey ? 1 : STEP;
  const way = { ArrowLeft: [-by, 0], ArrowRight: [by, 0], ArrowUp: [0, by], ArrowDown: [0, -by] }[event.key];
  if (!way && event.key.toLowerCase() !== 'r') return;
  event.preventDefault();
  if (way) shift(at, { along: piece.along + way[0], across: piece.across + way[1] });
  else shift(at, { turn: true });
}

function drag(event, piece, at, shape, svg) {
  if (waiting || event.button !== 0) return;
  event.preventDefault();
  shape.parentNode.append(shape);
  shape.focus();
  shape.setPointerCapture(event.pointerId);
  shape.classList.add('held');
  const scale = svg.getScreenCTM().a;
  const from = [event.clientX, event.clientY];
  let along = piece.along;
  let across = piece.across;
  const move = (now) => {
    along = piece.along + (now.clientX - from[0]) / scale;
    across = piece.layers === 'on_fold' ? piece.across : piece.across - (now.clientY - from[1]) / scale;
    shape.style.transform = shown({ along, across });
  };
  const up = () => {
    shape.removeEventListener('pointermove', move);
    shape.classList.remove('held');
    if (along !== piece.along || across !== piece.across) shift(at, { along, across });
  };
  shape.addEventListener('pointermove', move);
  shape.addEventListener('pointerup', up, { once: true });
  shape.addEventListener('pointercancel', up, { once: true });
}
