// Another name for the selected thing, wherever it is said: first what will change is shown, then it is written.
import { fill, make } from '../dom.js';
import { ask } from '../line.js';
import { select } from '../state.js';
import { RENAME } from '../words/rename.js';

const KINDS = ['piece', 'point', 'edge', 'path', 'inner', 'placement', 'number', 'dial', 'seam'];

let pending = '';
let written = null;

/** Whether another name is being typed: the ledger then waits with telling anew. */
export function isRenaming() {
  return Boolean(written?.isConnected);
}

/** A button that becomes a field; nothing for things that have no name of their own. `left` is called when it is left. */
export function renaming(thing, left) {
  if (!KINDS.includes(thing.kind)) return null;
  const holder = make('div', { class: 'renaming' });
  const rest = () => fill(holder, make('button', { type: 'button', class: 'link', 'data-rename': keyOf(thing), onclick: open }, RENAME.start));
  function open() {
    const old = thing.kind === 'piece' ? thing.piece : thing.name;
    const input = make('input', { class: 'number-field', value: old, 'aria-label': RENAME.label(old), autocomplete: 'off', spellcheck: 'false' });
    const told = make('div', { class: 'renaming-told' });
    const leave = () => { rest(); holder.querySelector('button').focus(); left(); };
    const mine = { thing, input, told, leave, shown: '' };
    input.addEventListener('input', () => { mine.shown = ''; fill(told); });
    holder.onkeydown = (event) => {
      if (event.key === 'Enter' && event.target.tagName === 'INPUT') { event.preventDefault(); onward(mine); }
      if (event.key === 'Escape') { event.preventDefault(); event.stopPropagation(); leave(); }
    };
    fill(holder, make('div', { class: 'renaming-field' }, input, make('button', { type: 'button', onclick: () => show(mine) }, RENAME.show)), told);
    written = input;
    input.focus();
    input.select();
  }
  rest();
  if (pending === keyOf(thing)) {
    pending = '';
    setTimeout(() => { if (holder.isConnected) open(); });
  }
  return holder;
}

function keyOf(thing) {
  return `${thing.kind} ${thing.piece ?? ''} ${thing.name}`;
}

function onward(mine) {
  return mine.shown === mine.input.value && mine.shown ? write(mine) : show(mine);
}

async function question(mine, more) {
  const { thing, input } = mine;
  return ask('rename', { kind: thing.kind, piece: thing.piece ?? '', name: thing.name, to: input.value, ...more });
}

async function show(mine) {
  const typed = mine.input.value;
  let answer;
  try {
    answer = await question(mine, {});
  } catch (refused) {
    fill(mine.told, make('p', { class: 'soft', role: 'status' }, refused.message));
    return;
  }
  if (mine.input.value !== typed) return;
  if (answer.why) {
    fill(mine.told, make('p', { class: 'soft', role: 'status' }, RENAME.why(answer.why, answer.name)));
    return;
  }
  mine.shown = typed;
  const files = new Set(answer.lines.map((line) => line.file)).size;
  fill(mine.told, make('p', { role: 'status' }, RENAME.changes(answer.lines.length, files)),
      make('ul', { class: 'renaming-lines', tabindex: '0', 'aria-label': RENAME.changes(answer.lines.length, files) }, ...answer.lines.map((line) => make('li', {}, changed(line)))),
      perhaps(answer.perhaps), ...answer.pictures.map(([file, name]) => make('p', { class: 'soft' }, RENAME.picture(file, name))),
      make('div', { class: 'acts' }, make('button', { type: 'button', class: 'chief', onclick: () => write(mine) }, RENAME.give),
          make('button', { type: 'button', onclick: mine.leave }, RENAME.leave)));
}

/** A line as it will be, the words that differ marked. */
function changed(line) {
  const [before, after] = [line.before, line.after];
  let from = 0;
  while (from < before.length && from < after.length && before[from] === after[from]) from++;
  let back = 0;
  while (back < before.length - from && back < after.length - from && before[before.length - 1 - back] === after[after.length - 1 - back]) back++;
  const start = from - /[\p{L}\p{N}_]*$/u.exec(after.slice(0, from))[0].length;
  const end = after.length - back + /^[\p{L}\p{N}_]*/u.exec(after.slice(after.length - back))[0].length;
  return make('span', {}, make('span', { class: 'soft' }, RENAME.where(line.file, line.line)),
      make('code', {}, after.slice(0, start), make('mark', {}, after.slice(start, end)), after.slice(end)));
}

function perhaps(all) {
  if (all.length === 0) return null;
  return make('details', { class: 'renaming-perhaps' }, make('summary', {}, RENAME.perhaps(all.length)), make('p', { class: 'soft' }, RENAME.perhapsHint),
      make('ul', { class: 'renaming-lines' }, ...all.map((line) => make('li', {}, make('label', {},
          make('input', { type: 'checkbox', value: line.id }), changed(line))))));
}

async function write(mine) {
  const { thing } = mine;
  const also = [...mine.told.querySelectorAll('input:checked')].map((each) => each.value);
  try {
    const answer = await question(mine, { also, write: true });
    if (!answer.changed) {
      fill(mine.told, make('p', { class: 'soft', role: 'status' }, RENAME.why(answer.why, answer.name)));
      return;
    }
    select(thing.kind === 'piece' ? { kind: 'piece', piece: answer.name, name: answer.name } : { ...thing, name: answer.name }, 'rename');
  } catch (refused) {
    fill(mine.told, make('p', { class: 'soft', role: 'status' }, refused.message));
  }
}

/** Selects a thing and opens its field once the ledger shows it, as F2 does in the document. */
export function openRenaming(thing) {
  const there = document.querySelector('[data-rename]');
  if (there?.dataset.rename === keyOf(thing)) there.click();
  else pending = keyOf(thing);
  select(thing, 'text');
}
