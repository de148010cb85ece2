// The board: a laying whose pieces are moved by hand. The server says where a piece may lie; here it is only drawn.
// While a piece is dragged it slides along its neighbours; where it was meant to lie shows as a dashed line.
import { draw, fill, make, set } from '../dom.js';
import { ask, hear } from '../line.js';
import { CLOTH } from '../words/cloth.js';
import { barsOf, clothOf, pieceOf, placed, pointsOf } from './laid.js';

const STEP = 10;

let row = -1;
let told = null;
let first = 0;
let place = null;
let said = '';
let toSay = '';
let chosen = -1;
let asked = null;
let next = null;
let drag = null;
let shapes = [];

hear('shifted', (head) => {
  const was = asked;
  asked = null;
  if (!place || !was || head.at !== was.at) return;
  const before = told.pieces[head.at];
  const [piece] = head.pieces;
  const moved = was.turns ? piece.turned !== before.turned : piece.along !== before.along || piece.across !== before.across;
  said = head.objection ? `${CLOTH.why[head.objection](piece.name, head.on)} ${moved || drag ? CLOTH.near : CLOTH.stays}` : '';
  const pieces = told.pieces.map((each, at) => (at === head.at ? piece : each));
  const { long, open_from, length, taken, density } = head;
  told = { ...told, long, open_from, length, taken, density, pieces };
  if (drag) {
    follow(piece, Boolean(head.objection));
  } else {
    paint();
    if (!said) say(CLOTH.piece(piece));
  }
  if (next) send(next);
});

/** The board of a row of the table. */
export function board(at) {
  const known = place && row === at;
  row = at;
  if (known) return place;
  place = make('div', { class: 'board' });
  said = toSay;
  toSay = '';
  chosen = -1;
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
  drag = null;
  asked = null;
  next = null;
  row = -1;
}

const places = (pieces) => pieces.map(({ item, copy, turned, mirrored, along, across }) => ({ item, copy, turned, mirrored, along, across }));

/** One question at a time; of what is wanted meanwhile only the newest is asked next. */
function send(wanted) {
  if (asked) {
    next = wanted;
    return;
  }
  next = null;
  asked = wanted;
  const from = drag ? drag.pieces : told.pieces;
  ask('shift', { row, places: places(from), at: wanted.at, ...wanted.fields(told.pieces[wanted.at]) }).catch(() => { asked = null; if (!drag) paint(); });
}

async function keep() {
  try {
    const { kept } = await ask('keep_laying', { row, places: places(told.pieces) });
    said = kept ? CLOTH.kept : CLOTH.refused;
    if (kept) toSay = said;
  } catch (reason) {
    said = reason.message;
  }
  if (place) paint();
}

function say(words) {
  const status = place.querySelector('.board-said');
  status.classList.toggle('refused', said !== '' && said !== CLOTH.kept);
  fill(status, words);
}

function paint() {
  const held = document.activeElement?.closest?.('.board-piece') !== null && place.contains(document.activeElement);
  const room = Math.max(60, 0.12 * told.long);
  const svg = clothOf(told, room, CLOTH.board);
  shapes = told.pieces.map((piece, at) => shapeOf(piece, at, svg));
  svg.append(...shapes, barsOf(told, room));
  const piece = told.pieces[chosen];
  fill(place, make('p', { class: 'soft' }, CLOTH.hint2, told.bars ? ` ${CLOTH.byBars}` : ''), svg, make('p', { class: 'board-takes' }),
      make('p', { role: 'status', class: 'board-said' }),
      make('div', { class: 'board-acts' },
          make('button', { type: 'button', class: 'chief', onclick: keep }, CLOTH.keep),
          make('button', { type: 'button', class: 'turn', disabled: !piece?.turns, onclick: () => send(turned(chosen)) }, piece ? CLOTH.turnPiece(piece.name) : CLOTH.turn)));
  takes();
  say(said);
  if (held && chosen >= 0) shapes[chosen].focus();
}

function takes() {
  const more = told.taken - first;
  fill(place.querySelector('.board-takes'), set(CLOTH.takes(told.length, told.density)), ' ', CLOTH.saves(more));
}

function shapeOf(piece, at, svg) {
  const shape = pieceOf(piece);
  for (const [name, value] of Object.entries({ tabindex: 0, role: 'button', 'aria-label': CLOTH.piece(piece), 'aria-pressed': at === chosen ? 'true' : 'false' })) shape.setAttribute(name, value);
  placed(shape, told, piece);
  shape.addEventListener('focus', () => choose(at));
  shape.addEventListener('keydown', (event) => keys(event, at));
  shape.addEventListener('pointerdown', (event) => take(event, at, shape, svg));
  return shape;
}

function choose(at) {
  if (chosen === at) return;
  chosen = at;
  shapes.forEach((each, i) => each.setAttribute('aria-pressed', i === at ? 'true' : 'false'));
  const turn = place.querySelector('.turn');
  turn.disabled = !told.pieces[at].turns;
  fill(turn, CLOTH.turnPiece(told.pieces[at].name));
}

const turned = (at) => ({ at, turns: true, fields: () => ({ turn: true }) });

function keys(event, at) {
  const by = event.shiftKey ? 1 : STEP;
  const bars = told.pieces[at].held ? told.bars ?? {} : {};
  const [x, y] = [bars.along ?? by, bars.across ?? by];
  const way = { ArrowLeft: [-x, 0], ArrowRight: [x, 0], ArrowUp: [0, y], ArrowDown: [0, -y] }[event.key];
  if (!way && event.key.toLowerCase() !== 'r') return;
  event.preventDefault();
  if (drag) return;
  send(way ? { at, fields: (piece) => ({ along: piece.along + way[0], across: piece.across + way[1] }) } : turned(at));
}

function take(event, at, shape, svg) {
  if (asked || event.button !== 0) return;
  event.preventDefault();
  const piece = told.pieces[at];
  // The others are put below it, not it above them: a finger lets go of a thing that is put elsewhere.
  for (const other of shapes) if (other !== shape) svg.insertBefore(other, shape);
  shape.focus();
  choose(at);
  shape.setPointerCapture(event.pointerId);
  shape.classList.add('held');
  const ghost = draw('g', { class: 'board-meant' }, draw('polygon', { points: pointsOf(piece) }));
  svg.insertBefore(ghost, shape);
  placed(ghost, told, piece);
  const scale = svg.getScreenCTM().a;
  const from = [event.clientX, event.clientY];
  drag = { at, shape, ghost, pieces: told.pieces, moved: false };
  const move = (now) => {
    const along = piece.along + (now.clientX - from[0]) / scale;
    const across = piece.layers === 'on_fold' ? piece.across : piece.across - (now.clientY - from[1]) / scale;
    drag.moved = true;
    placed(ghost, told, { along, across });
    send({ at, fields: () => ({ along, across }) });
  };
  const up = () => {
    shape.removeEventListener('pointermove', move);
    rest();
  };
  shape.addEventListener('pointermove', move);
  shape.addEventListener('pointerup', up, { once: true });
  shape.addEventListener('pointercancel', up, { once: true });
}

/** The piece comes to lie where the last answer has it. */
function rest() {
  if (!drag) return;
  if (asked || next) {
    setTimeout(rest, 16);
    return;
  }
  drag = null;
  if (place) paint();
}

function follow(piece, refused) {
  placed(drag.shape, told, piece);
  drag.ghost.classList.toggle('refused', refused);
  const end = place.querySelector('.board-end');
  end.setAttribute('x1', told.long);
  end.setAttribute('x2', told.long);
  takes();
  say(said);
}
