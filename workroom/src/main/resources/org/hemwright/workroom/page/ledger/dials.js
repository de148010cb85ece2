// The dials as sliders; while one is turned the pieces and the garment's measurements answer.
import { fill, make, set } from '../dom.js';
import { ask } from '../line.js';
import { get, watch } from '../state.js';
import { take } from '../table/pieces.js';
import { DIALS } from '../words/dials.js';

const STEPS = 400;
let holder = null;
let turning = null;

/** Dials and measurements, kept as they stand while they are in the page. */
export function dials() {
  holder = make('div', { class: 'dials' });
  tell();
  return holder;
}

watch(['pieces', 'size'], () => { if (holder?.isConnected && !turning) tell(); });

async function tell() {
  const mine = holder;
  let answer;
  try {
    answer = await ask('dials', { size: get('size') });
  } catch {
    return;
  }
  if (mine !== holder || turning) return;
  const focus = document.activeElement?.dataset?.dial;
  fill(holder, answer.dials.length ? make('h2', {}, DIALS.title) : null, ...answer.dials.map(dial),
      answer.measures.length ? make('h2', { class: 'garment-title' }, DIALS.garment(get('sizes')[get('size')] ?? '')) : null,
      make('table', { class: 'garment' }, make('tbody', {})));
  garment(answer.measures);
  if (focus) holder.querySelector(`[data-dial="${focus}"]`)?.focus();
}

function garment(measures) {
  const rows = measures.map((each) => make('tr', {}, make('th', { scope: 'row' }, each.label),
      make('td', {}, set(each.said), each.ease ? make('div', { class: 'soft' }, set(DIALS.ease(each.ease))) : null)));
  fill(holder.querySelector('.garment tbody'), ...rows);
}

function dial(told) {
  const span = told.to - told.from || 1;
  const id = `dial-${told.name}`;
  const shown = make('output', { for: id }, set(told.said));
  const input = make('input', {
    type: 'range', id, min: 0, max: STEPS, step: 1, value: Math.round(((told.value - told.from) / span) * STEPS),
    'aria-valuetext': told.said, 'data-dial': told.name,
  });
  input.addEventListener('input', () => turn(told, input, shown, told.from + (input.value / STEPS) * span));
  input.addEventListener('change', () => letGo(true));
  input.addEventListener('keydown', (event) => { if (event.key === 'Escape') letGo(false); });
  return make('div', { class: 'dial' }, make('label', { for: id }, told.text || told.name.replaceAll('_', ' '), shown), input,
      make('div', { class: 'ends', 'aria-hidden': 'true' }, make('span', {}, set(told.least)), make('span', {}, set(told.most))));
}

/** Asks one turn at a time; the last one wins. */
function turn(told, input, shown, value) {
  turning ??= { busy: false, next: null };
  turning.next = { told, input, shown, value };
  if (!turning.busy) ahead();
}

async function ahead() {
  const mine = turning;
  mine.busy = true;
  while (mine.next) {
    const { told, input, shown, value } = mine.next;
    mine.next = null;
    try {
      const answer = await ask('turn', { name: told.name, value, size: get('size') });
      take(answer);
      fill(shown, set(answer.said));
      input.setAttribute('aria-valuetext', answer.said);
      garment(answer.measures);
    } catch {
      break;
    }
  }
  mine.busy = false;
  if (mine.done !== undefined) finish(mine);
}

function letGo(keep) {
  if (!turning) return;
  turning.done = keep;
  if (!turning.busy) finish(turning);
}

async function finish(mine) {
  turning = null;
  await ask('turned', { keep: mine.done }).catch(() => {});
  tell();
}
