// Another name for the selected thing, wherever the document says it.
import { fill, make } from '../dom.js';
import { ask } from '../line.js';
import { select } from '../state.js';
import { RENAME } from '../words/rename.js';

const KINDS = ['piece', 'point', 'edge', 'path', 'inner', 'placement', 'number', 'dial'];

/** A button that becomes a field; nothing for things that have no name of their own. */
export function renaming(thing) {
  if (!KINDS.includes(thing.kind)) return null;
  const holder = make('div', { class: 'renaming' });
  const rest = () => fill(holder, make('button', { type: 'button', class: 'link', 'data-rename': true, onclick: open }, RENAME.start));
  function open() {
    const old = thing.kind === 'piece' ? thing.piece : thing.name;
    const input = make('input', { class: 'number-field', value: old, 'aria-label': RENAME.label(old), autocomplete: 'off', spellcheck: 'false' });
    const told = make('p', { class: 'soft', role: 'status' });
    input.addEventListener('keydown', (event) => {
      if (event.key === 'Enter') give(input.value, told);
      if (event.key === 'Escape') { event.stopPropagation(); rest(); holder.querySelector('button').focus(); }
    });
    fill(holder, input, ' ', make('button', { type: 'button', onclick: () => give(input.value, told) }, RENAME.give), told);
    input.focus();
    input.select();
  }
  async function give(to, told) {
    try {
      const answer = await ask('rename', { kind: thing.kind, piece: thing.piece ?? '', name: thing.name, to });
      if (!answer.changed) { told.textContent = RENAME.stays(to); return; }
      select(thing.kind === 'piece' ? { kind: 'piece', piece: answer.name, name: answer.name } : { ...thing, name: answer.name }, 'rename');
    } catch (refused) {
      told.textContent = refused.message;
    }
  }
  rest();
  return holder;
}

/** Opens the field of what is selected, as F2 does in the document. */
export function openRenaming() {
  document.querySelector('[data-rename]')?.click();
}
