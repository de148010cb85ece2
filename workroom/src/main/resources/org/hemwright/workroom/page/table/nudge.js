// Moving what is selected without a pointer held down: arrow keys, or a tap for each step. The sentence stands below the
// table until it is written or laid back, as it does for a drag.
import { fill, make } from '../dom.js';
import { ask } from '../line.js';
import { get, watch } from '../state.js';
import { DRAG } from '../words/drag.js';
import { take } from './pieces.js';

const KINDS = ['point', 'notch', 'edge', 'path'];
const WAYS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
const STEP = 1;
const FAR = 10;
let now = null;

/** Whether a thing can be moved by steps. */
export function canNudge(thing) {
  return Boolean(thing) && KINDS.includes(thing.kind) && get('job') === 'draft';
}

/** A key on the table: whether it was a step, a choice or an end of moving. */
export function nudgeKey(event) {
  const way = WAYS[event.key];
  if (way && canNudge(get('selected')) && !event.altKey) {
    step(way, event.shiftKey ? FAR : STEP);
    return true;
  }
  if (!now) return false;
  if (event.key === 'Enter') end(true);
  else if (event.key === 'Escape') end(false);
  else if (/^[1-9]$/.test(event.key) && Number(event.key) <= (now.ways?.length ?? 0)) choose(Number(event.key) - 1);
  else return false;
  return true;
}

/** The button with which moving by steps starts; its steps are buttons too. */
export function nudging(thing) {
  return canNudge(thing) ? make('button', { type: 'button', class: 'link nudging', onclick: () => {
    document.querySelector('#table canvas').focus({ preventScroll: true });
    begin(thing);
  } }, DRAG.start) : null;
}

watch(['selected', 'job', 'size'], () => { if (now && !same(get('selected'), now.thing)) end(false); else if (now && get('size') !== now.size) end(false); });

function same(a, b) {
  return a && b && a.kind === b.kind && a.piece === b.piece && a.name === b.name;
}

function begin(thing) {
  if (now) return now.held;
  const mine = { thing, size: get('size'), way: 0, off: [0, 0], ways: null };
  now = mine;
  mine.held = ask('hold', { kind: thing.kind, piece: thing.piece, name: thing.name, size: mine.size, share: thing.kind === 'edge' || thing.kind === 'path' ? 0.5 : 0 })
    .then((answer) => {
      if (now !== mine) return;
      mine.ways = answer.ways;
      mine.from = [answer.x, answer.y];
      build();
    }, (refused) => { if (now === mine) { now = null; tell(refused.message); } });
  return mine.held;
}

async function step([right, up], far) {
  await begin(get('selected'));
  if (!now?.ways?.length) return;
  now.off = [now.off[0] + right * far, now.off[1] + up * far];
  follow();
}

/** Asks one at a time; the last step wins. */
async function follow() {
  const mine = now;
  mine.again = true;
  if (mine.busy) return;
  mine.busy = true;
  while (mine.again && now === mine) {
    mine.again = false;
    try {
      const answer = await ask('drag', {
        way: mine.way, x: mine.from[0] + mine.off[0], y: mine.from[1] + mine.off[1], size: mine.size, from: get('from'), to: get('to'),
      });
      take(answer);
      mine.moved = true;
      if (now === mine && mine.line) mine.line.textContent = answer.text;
    } catch (refused) {
      if (now === mine) { now = null; tell(refused.message); }
    }
  }
  mine.busy = false;
}

function tell(words) {
  const place = document.getElementById('sentence');
  fill(place, make('p', { role: 'status' }, words));
  place.hidden = false;
}

function build() {
  const mine = now;
  const place = document.getElementById('sentence');
  place.hidden = false;
  if (mine.ways.length === 0) {
    fill(place, make('p', { role: 'status' }, DRAG.none), make('div', { class: 'acts' }, make('button', { type: 'button', onclick: () => end(false) }, DRAG.leave)));
    return;
  }
  mine.line = make('p', { class: 'sentence-line', role: 'status' }, DRAG.step);
  const steps = Object.entries(WAYS).map(([key, way]) => make('button', { type: 'button', onclick: () => step(way, STEP) }, DRAG.toward[key]));
  mine.radios = mine.ways.map((way, index) => {
    const input = make('input', { type: 'radio', name: 'nudge-way', onchange: () => choose(index) });
    input.checked = index === mine.way;
    return input;
  });
  fill(place, mine.line,
      mine.ways.length < 2 ? null : make('div', { class: 'nudge-ways', role: 'radiogroup', 'aria-label': DRAG.how },
          ...mine.ways.map((way, index) => make('label', {}, mine.radios[index], `${index + 1}  ${DRAG.way(way)}`))),
      make('div', { class: 'acts' }, ...steps, make('button', { type: 'button', class: 'chief', onclick: () => end(true) }, DRAG.write),
          make('button', { type: 'button', onclick: () => end(false) }, DRAG.leave)));
}

function choose(way) {
  now.way = way;
  now.radios[way].checked = true;
  if (now.moved) follow();
}

async function end(keep) {
  const mine = now;
  if (!mine) return;
  now = null;
  document.getElementById('sentence').hidden = true;
  while (mine.busy) await new Promise((done) => setTimeout(done, 8));
  ask('drop', { keep: keep && Boolean(mine.moved) }).catch(() => {});
}
