// The lines of the document that make the selected thing, each number in a field of its own: what is typed there is
// shown on the table, and as the line that will be written, before Enter writes it.
import { fill, make } from '../dom.js';
import { ask } from '../line.js';
import { get } from '../state.js';
import { LINES } from '../words/lines.js';

let typing = null;
let refocus = null;
let whenLeft = () => {};

/** The lines of a thing, filled in once they are known; `left` is called when what was typed is left. */
export function saidLines(thing, left) {
  const holder = make('section', { class: 'said-lines' });
  whenLeft = left;
  tell(holder, thing);
  return holder;
}

/** Whether a number is being typed: the ledger then waits with telling anew. */
export function isTyping() {
  return Boolean(typing?.input.isConnected);
}

async function tell(holder, thing) {
  let answer;
  try {
    answer = await ask('lines', { kind: thing.kind, piece: thing.piece ?? '', name: thing.name, size: get('size') });
  } catch {
    return;
  }
  if (answer.lines.length === 0 || !answer.lines.some((line) => line.parts.some((part) => part.written))) return;
  let number = 0;
  fill(holder, make('h3', {}, LINES.title), ...answer.lines.map((line) => {
    const below = make('div', { class: 'typed-ways', hidden: true });
    return make('div', { class: 'said-line' }, make('p', {}, ...line.parts.map((part) =>
      typeof part === 'string' ? part : field(part, line.line, answer.revision, below, `${keyOf(thing)} ${number++}`))), below);
  }));
  if (refocus) holder.querySelector(`[data-number="${CSS.escape(refocus)}"]`)?.focus();
  refocus = null;
}

function keyOf(thing) {
  return `${thing.kind} ${thing.piece} ${thing.name}`;
}

function field(part, line, revision, below, key) {
  const input = make('input', {
    class: 'number-field', value: part.written, size: Math.max(3, part.written.length), autocomplete: 'off', spellcheck: 'false',
    'aria-label': LINES.number(part.written, line), 'data-number': key,
  });
  input.addEventListener('input', () => {
    input.size = Math.max(3, input.value.length);
    typing = typing?.input === input ? typing : { input, part, revision, below, key, way: 0, busy: false };
    follow(typing);
  });
  input.addEventListener('keydown', (event) => {
    if (event.key === 'Enter') {
      event.preventDefault();
      if (typing?.input === input) write(typing);
    } else if (event.key === 'Escape' && typing?.input === input) {
      event.preventDefault();
      event.stopPropagation();
      leave(typing);
    } else if (typing?.input === input && typing.ways?.length > 1 && event.altKey && /^[1-9]$/.test(event.key)) {
      event.preventDefault();
      choose(typing, Number(event.key) - 1);
    }
  });
  return input;
}

function question(mine) {
  return { revision: mine.revision, at: mine.part.at, typed: mine.input.value, way: mine.way, size: get('size') };
}

/** Asks one at a time what comes of it; what was typed last wins. */
async function follow(mine) {
  mine.again = true;
  if (mine.busy) return;
  mine.busy = true;
  while (mine.again && typing === mine) {
    mine.again = false;
    const answer = await ask('try number', question(mine)).catch((refused) => ({ ways: [], slips: [refused.message], told: [] }));
    if (typing !== mine) break;
    mine.ways = answer.ways;
    mine.way = Math.min(mine.way, Math.max(0, answer.ways.length - 1));
    show(mine, answer);
  }
  mine.busy = false;
}

function show(mine, answer) {
  mine.below.hidden = false;
  mine.input.setAttribute('aria-invalid', answer.ways.length ? 'false' : 'true');
  if (answer.ways.length === 0) {
    fill(mine.below, make('p', { class: 'soft', role: 'status' }, answer.slips[0] ?? LINES.none(mine.part.written)));
    return;
  }
  const name = `way-${mine.part.at}`;
  fill(mine.below, make('p', { class: 'soft' }, LINES.will),
      make('div', { role: 'radiogroup', 'aria-label': LINES.ways }, ...answer.ways.map((way, index) => {
        const input = make('input', { type: 'radio', name, onchange: () => choose(mine, index) });
        input.checked = index === mine.way;
        return make('label', { class: 'typed-way' }, input,
            make('span', {}, make('code', {}, way.text), answer.ways.length > 1 ? make('span', { class: 'soft' }, ` ${LINES.kind[way.kind]}`) : null));
      })),
      ...answer.told.map((each) => make('p', { class: 'typed-told' }, each)),
      make('div', { class: 'acts' },
          make('button', { type: 'button', class: 'chief', onclick: () => write(mine) }, LINES.write),
          make('button', { type: 'button', onclick: () => leave(mine) }, LINES.leave)));
}

function choose(mine, way) {
  mine.way = Math.min(way, mine.ways.length - 1);
  follow(mine);
}

async function write(mine) {
  if (!mine.input.value.trim()) return;
  refocus = mine.key;
  typing = null;
  try {
    const answer = await ask('write number', question(mine));
    if (!answer.changed) leave(mine);
  } catch (refused) {
    typing = mine;
    show(mine, { ways: [], slips: [refused.message], told: [] });
  }
}

function leave(mine) {
  typing = null;
  mine.input.value = mine.part.written;
  mine.input.removeAttribute('aria-invalid');
  mine.below.hidden = true;
  fill(mine.below);
  mine.input.focus();
  refocus = mine.key;
  ask('lay back').catch(() => {});
  whenLeft();
}
