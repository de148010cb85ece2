// Shows the designer round on her own drawing: a card beside what it speaks of. It stands in nobody's way: all can be
// used meanwhile, Escape ends it, and it is offered once.
import { fill, make } from '../dom.js';
import { ask, hear } from '../line.js';
import { get, watch } from '../state.js';
import { names, nearestDrawing } from '../table/pieces.js';
import { GUIDE, STATIONS } from '../words/guide.js';

/** Where each station is, and what changes once she has done what it asks. */
const WAY = [
  { name: 'table', at: '#table' },
  { name: 'tape', at: '#tape', done: ['size', 'from', 'to'] },
  { name: 'ledger', at: '#ledger', done: ['selected'] },
  { name: 'drag', at: '#table', done: ['revision'] },
  { name: 'text', at: '#text' },
  { name: 'jobs', at: '.jobs' },
  { name: 'kept', at: '.head' },
];
const WIDE = 330;
const GAP = 14;

let card = null;
let station = -1;
let came = null;

/** Starts: the way back to the start page, the button that shows round, and the offer to who is new. */
export function startGuide() {
  const again = make('button', { type: 'button', class: 'plain', onclick: () => show(0) }, GUIDE.again);
  const away = make('button', { type: 'button', class: 'plain', onclick: () => ask('away').catch(() => {}) }, GUIDE.away);
  document.getElementById('head-ways').append(again, away);
  hear('moved', () => location.reload());
  hear('guide', (head) => { if (!head.shown && station < 0) offer(); });
  for (const [at, { done }] of WAY.entries()) if (done) watch(done, () => { if (station === at) well(); });
  document.addEventListener('keydown', (event) => { if (event.key === 'Escape' && card?.contains(document.activeElement)) end(); });
  addEventListener('resize', () => { if (card) place(); });
}

function own() {
  const sizes = get('sizes');
  const first = names()[0];
  return {
    title: get('title') || 'your pattern', pieces: names().length, size: sizes[get('size')] ?? '', smallest: sizes[0] ?? '', largest: sizes[sizes.length - 1] ?? '',
    piece: (first && nearestDrawing(first, get('size'))?.structure.title) || 'a piece',
  };
}

function open(...children) {
  card?.remove();
  card = make('section', { class: 'guide', 'aria-labelledby': 'guide-title' }, ...children);
  document.body.append(card);
  place();
}

function offer() {
  open(make('h2', { id: 'guide-title' }, GUIDE.offer), make('p', {}, GUIDE.offered(own().title)), make('div', { class: 'acts' },
      make('button', { type: 'button', class: 'chief', onclick: () => show(0) }, GUIDE.yes), make('button', { type: 'button', onclick: end }, GUIDE.no)));
}

function show(at) {
  if (station < 0) came = document.activeElement;
  station = at;
  const { title, words, ask: wanted } = STATIONS[WAY[at].name];
  const last = at === WAY.length - 1;
  const next = make('button', { type: 'button', class: 'chief', onclick: () => (last ? end() : show(at + 1)) }, last ? GUIDE.last : GUIDE.next);
  open(make('p', { class: 'soft guide-place' }, GUIDE.place(at + 1, WAY.length)), make('h2', { id: 'guide-title' }, title), ...words(own()).map((each) => make('p', {}, each)),
      wanted ? make('p', { class: 'guide-ask', role: 'status' }, wanted) : null,
      make('div', { class: 'acts' }, next, at > 0 ? make('button', { type: 'button', onclick: () => show(at - 1) }, GUIDE.back) : null,
          last ? null : make('button', { type: 'button', class: 'plain', onclick: end }, GUIDE.leave)));
  next.focus({ preventScroll: true });
}

/** She has done what the station asks. */
function well() {
  const line = card?.querySelector('.guide-ask');
  if (!line) return;
  line.classList.add('done');
  fill(line, GUIDE.done);
}

function end() {
  station = -1;
  mark(null);
  card?.remove();
  card = null;
  ask('shown_round').catch(() => {});
  came?.focus?.();
}

function mark(target) {
  for (const each of document.querySelectorAll('.guide-here')) each.classList.remove('guide-here');
  target?.classList.add('guide-here');
}

/** Beside what it speaks of, where there is room; else upon it, in a corner. */
function place() {
  if (station < 0) {
    mark(null);
    const tape = document.getElementById('tape').getBoundingClientRect();
    put(tape.left + GAP, tape.top - card.offsetHeight - GAP);
    return;
  }
  const target = document.querySelector(WAY[station].at);
  mark(target);
  const box = target.getBoundingClientRect();
  const high = card.offsetHeight;
  if (box.left >= WIDE + 2 * GAP) put(box.left - WIDE - GAP, box.top + GAP);
  else if (innerWidth - box.right >= WIDE + 2 * GAP) put(box.right + GAP, box.top + GAP);
  else if (box.top >= high + 2 * GAP) put(box.left + GAP, box.top - high - GAP);
  else if (innerHeight - box.bottom >= high + 2 * GAP) put(Math.min(box.left + GAP, innerWidth - WIDE - GAP), box.bottom + GAP);
  else put(box.left + GAP, box.top + GAP);
}

function put(x, y) {
  card.style.left = `${Math.max(GAP, Math.min(x, innerWidth - WIDE - GAP))}px`;
  card.style.top = `${Math.max(GAP, Math.min(y, innerHeight - card.offsetHeight - GAP))}px`;
}
