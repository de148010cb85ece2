// Adding by pointing: first what it is to be, then what it depends on; the lines that will be written grow below the
// table as she points, in every way that the language has, and the table shows what comes of the one chosen.
import { fill, make, set } from '../dom.js';
import { ask } from '../line.js';
import { get, put, select, watch } from '../state.js';
import { looked, paintOver, repaint, takePointer } from '../table/table.js';
import { drawing } from '../table/pieces.js';
import { ADD } from '../words/add.js';
import { pickAt, pickOf, placeOnTable } from './pick.js';
import { paintPicks } from './chalk.js';

const WHATS = ['point', 'line', 'curve', 'notch', 'seam', 'piece', 'view'];
const NEAR = 7;
let now = null;

/** The words with which adding starts. */
export function startAdding(holder) {
  const word = (what) => make('button', {
    type: 'button', class: 'plain', 'data-add': what, onclick: () => (now?.what === what ? leave() : begin(what)),
  }, ADD.what[what]);
  holder.append(make('span', { class: 'soft' }, ADD.add), ...WHATS.map(word), make('span', { class: 'soft' }, ADD.or), word('measure'));
  watch(['selected'], () => {
    const thing = get('selected');
    if (now && thing?.by === 'ledger') take(pickOf(thing, now));
  });
  watch(['job'], () => { if (now && get('job') !== 'draft') leave(); });
  watch(['pieces', 'size'], () => { if (now && !now.writing) tell(false); });
}

function begin(what) {
  if (now) leave();
  const view = looked();
  now = {
    what, picks: [], way: 0, name: '', ways: [], cross: null, guides: [], points: view.points,
    release: takePointer({ move: hover, click, key }), unpaint: paintOver((...all) => paintPicks(now, ...all)),
  };
  view.points = true;
  build();
  press();
  const canvas = document.querySelector('#table canvas');
  canvas.focus({ preventScroll: true });
}

function press() {
  for (const button of document.querySelectorAll('[data-add]')) button.setAttribute('aria-pressed', String(now?.what === button.dataset.add));
}

/** Ends it; what is not written is laid back. */
export function leave() {
  if (!now) return;
  const mine = now;
  now = null;
  looked().points = mine.points;
  mine.release();
  mine.unpaint();
  document.getElementById('sentence').hidden = true;
  press();
  if (mine.shown) ask('lay back').catch(() => {});
  put({ measured: null });
  repaint();
}

function build() {
  const mine = now;
  mine.prompt = make('p', { role: 'status' }, ADD.prompt(mine.what, 0));
  mine.list = make('div', { class: 'add-ways', role: 'radiogroup', 'aria-label': ADD.ways });
  mine.field = make('input', { class: 'number-field', autocomplete: 'off', spellcheck: 'false', 'aria-label': ADD.called });
  mine.field.addEventListener('input', () => { mine.name = mine.field.value; tell(false); });
  mine.field.addEventListener('keydown', (event) => {
    if (event.key === 'Enter') write();
    if (event.key === 'Escape') leave();
  });
  mine.write = make('button', { type: 'button', class: 'chief', onclick: write, disabled: true }, mine.what === 'measure' ? ADD.keep : ADD.write);
  mine.back = make('button', { type: 'button', onclick: back, disabled: true }, ADD.back);
  const place = document.getElementById('sentence');
  place.hidden = false;
  fill(place, mine.prompt, mine.list, make('div', { class: 'acts' },
      mine.what === 'notch' ? null : make('label', { class: 'add-name' }, ADD.called, ' ', mine.field), mine.write, mine.back,
      make('button', { type: 'button', onclick: leave }, ADD.leave)));
}

function fields(picks) {
  return {
    what: now.what, name: now.name, way: now.way, size: get('size'), near: NEAR / looked().camera.scale,
    picks: picks.map(({ kind, piece, name, x, y }) => ({ kind, piece, name, x, y })),
  };
}

function hover(px, py, event) {
  const mine = now;
  const pick = pickAt(px, py, event, mine);
  mine.guides = pick?.guides ?? [];
  mine.ghost = pick;
  repaint();
  if (!pick || mine.hovering) return;
  mine.hovering = true;
  ask('add', { ...fields([...mine.picks, pick]), hover: true }).then((answer) => {
    mine.hovering = false;
    if (now === mine && mine.ghost && (mine.picks.length === 0 || mine.ways.length === 0)) list(answer.ways, true);
  }, () => { mine.hovering = false; });
}

function click(px, py, event) {
  take(pickAt(px, py, event, now));
}

function take(pick) {
  if (!pick) {
    now.prompt.textContent = ADD.beside(now.what);
    return;
  }
  const last = now.picks[now.picks.length - 1];
  const again = last && last.kind === pick.kind && last.piece === pick.piece && last.name === pick.name && pick.kind !== 'line' && pick.kind !== 'place';
  if (again) return;
  if (now.what === 'point' && now.picks.length > 1 && !byTwo(now.picks, pick)) now.picks = [];
  if (now.what === 'view' && now.picks.some((each) => each.piece === pick.piece)) return;
  if (now.what === 'measure' && now.picks.length > 1 && !goesOn(now.picks, pick)) now.picks = [];
  if (now.what === 'notch') now.picks = pick.kind === 'point' ? now.picks.slice(0, 1) : [];
  now.picks = [...now.picks, pick];
  now.way = 0;
  now.ghost = null;
  now.guides = [];
  tell(true);
}

/** After two points a third is mirrored across them, and a place lies at a distance from each. */
function byTwo(picks, pick) {
  return picks.length === 2 && picks.every((each) => each.kind === 'point') && (pick.kind === 'point' || pick.kind === 'place');
}

/** A third point makes an angle, a further line a sum; all else is measured afresh. */
function goesOn(picks, pick) {
  const all = [...picks, pick];
  return (all.length === 3 && all.every((each) => each.kind === 'point')) || all.every((each) => each.kind === 'line');
}

function back() {
  now.picks = now.picks.slice(0, -1);
  now.way = 0;
  tell(true);
}

/** Asks in which ways it can be said, one question at a time. */
async function tell(named) {
  const mine = now;
  mine.again = true;
  if (mine.busy) return;
  mine.busy = true;
  while (mine.again && now === mine) {
    mine.again = false;
    if (mine.picks.length === 0) {
      mine.ways = [];
      list([], false);
      if (mine.shown) ask('lay back').catch(() => {});
      mine.shown = false;
      mine.prompt.textContent = ADD.prompt(mine.what, 0);
      continue;
    }
    let answer;
    try {
      answer = await ask('add', fields(mine.picks));
    } catch (refused) {
      if (now === mine) mine.prompt.textContent = refused.message;
      break;
    }
    if (now !== mine) break;
    mine.ways = answer.ways;
    mine.shown = true;
    if (named && mine.name === '') mine.field.value = answer.name;
    mine.called = answer.name;
    layWherePointed(mine);
    mine.prompt.textContent = answer.problem ?? ADD.prompt(mine.what, mine.picks.length, answer.ways.length);
    list(answer.ways, false);
  }
  mine.busy = false;
  if (now !== mine) return;
  const chosen = mine.ways[mine.way];
  if (mine.what === 'measure') put({ measured: chosen?.rows ? { lines: chosen.lines, row: chosen.rows[0] } : null });
  repaint();
}

/** A new piece lies where its corners were pointed at. */
function layWherePointed(mine) {
  const drawn = mine.what === 'piece' && mine.picks[0].kind === 'place' && drawing(mine.called, get('size'));
  if (!drawn) return;
  const n = drawn.numbers;
  const least = (axis) => Math.min(...mine.picks.map((pick) => pick[axis]));
  const most = (axis) => Math.max(...mine.picks.map((pick) => pick[axis]));
  looked().places.set(mine.called, [
    (least('x') + most('x')) / 2 - (n[2] + n[4]) / 2 + drawn.stackX,
    (least('y') + most('y')) / 2 - (n[3] + n[5]) / 2 + drawn.stackY,
  ]);
}

function list(ways, ghost) {
  const mine = now;
  mine.write.disabled = ghost || ways.length === 0;
  mine.back.disabled = mine.picks.length === 0;
  fill(mine.list, ...ways.map((way, index) => {
    const said = way.rows?.[0]?.values[get('size')];
    const words = make('span', {}, said ? make('b', { class: 'add-said' }, set(said)) : null, make('code', {}, way.lines.join('\n')), ghost ? null : make('span', { class: 'soft' }, ADD.way[way.way] ?? ''));
    if (ghost) return make('p', { class: 'add-way ghost' }, words);
    const input = make('input', { type: 'radio', name: 'add-way', onchange: () => choose(index) });
    input.checked = index === mine.way;
    return make('label', { class: 'add-way' }, input, words);
  }));
}

function choose(way) {
  now.way = way;
  tell(false);
}

async function write() {
  const mine = now;
  if (!mine || mine.ways.length === 0) return;
  mine.writing = true;
  mine.inside = !mine.picks.every((pick) => pick.kind === 'line') || mine.picks.length === 1;
  try {
    await ask('write addition', fields(mine.picks));
  } catch (refused) {
    mine.writing = false;
    mine.prompt.textContent = refused.message;
    return;
  }
  mine.shown = false;
  leave();
  const piece = mine.picks.find((each) => each.piece)?.piece ?? '';
  const kinds = { point: 'point', line: 'path', curve: 'path', piece: 'piece', measure: 'number' };
  if (kinds[mine.what]) {
    const owner = mine.what === 'piece' ? mine.called : mine.what === 'measure' && !mine.inside ? '' : piece;
    select({ kind: kinds[mine.what], piece: owner, name: mine.called }, 'add');
  }
}

/** Without a mouse: arrows move a chalk cross, Enter points with it and then writes. */
function key(event) {
  const view = looked();
  const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  if (event.key === 'Escape') leave();
  else if (event.key === 'Backspace') back();
  else if (arrows[event.key]) {
    const step = event.shiftKey ? 1 : 12;
    const at = now.cross ?? crossStart(view);
    now.cross = [at[0] + arrows[event.key][0] * step, at[1] + arrows[event.key][1] * step];
    now.moved = true;
    hover(now.cross[0], now.cross[1], null);
  } else if (event.key === 'Enter') {
    if (now.cross && now.moved) {
      now.moved = false;
      click(now.cross[0], now.cross[1], null);
    } else {
      write();
    }
  } else if (/^[1-9]$/.test(event.key) && Number(event.key) <= now.ways.length) choose(Number(event.key) - 1);
  else return false;
  return true;
}

/** The cross starts on the last pick, or in the middle of the selected piece. */
function crossStart(view) {
  const last = now.picks[now.picks.length - 1];
  if (last) return placeOnTable(last);
  const piece = get('selected')?.piece;
  const drawn = piece && drawing(piece, view.size);
  if (!drawn) return [view.width / 2, view.height / 2];
  const n = drawn.numbers;
  return placeOnTable({ piece, x: (n[2] + n[4]) / 2, y: (n[3] + n[5]) / 2 });
}
