// What a name is worth, in every size, when the pointer rests on it; F12 or Ctrl and click goes to where it is said.
import { EditorView, hoverTooltip, keymap } from '@codemirror/view';
import { make, set } from '../dom.js';
import { ask } from '../line.js';
import { thingOf } from './things.js';
import { get } from '../state.js';
import { openRenaming } from '../ledger/rename.js';
import { TEXT } from '../words/text.js';

/** The name at a place: {name, from, to}, with its owner where it is said with one. */
export function nameAt(state, at) {
  const line = state.doc.lineAt(at);
  for (const match of line.text.matchAll(/[\p{L}][\p{L}\p{N}_]*(?:\.[\p{L}][\p{L}\p{N}_]*)?/gu)) {
    const from = line.from + match.index;
    const to = from + match[0].length;
    if (from <= at && at <= to) return { name: match[0], from, to, owner: ownerOf(state, line.number) };
  }
  return null;
}

function ownerOf(state, number) {
  for (let i = number; i >= 1; i--) {
    const text = state.doc.line(i).text;
    const match = /^(\p{L}+)\s+([\p{L}\p{N}_]+)/u.exec(text);
    if (match) return match[1] === 'piece' || match[1] === 'part' ? match[2] : '';
  }
  return '';
}

const tip = hoverTooltip(async (view, at) => {
  const found = nameAt(view.state, at);
  if (!found) return null;
  let answer;
  try {
    answer = await ask('meaning', { name: found.name, owner: found.owner });
  } catch {
    return null;
  }
  if (answer.values.length === 0) return null;
  return { pos: found.from, end: found.to, above: true, create: () => ({ dom: values(answer) }) };
}, { hoverTime: 350 });

function values(answer) {
  const now = get('sizes')[get('size')];
  const rows = grouped(answer.values).map(([sizes, value]) => make('tr', { class: sizes.includes(now) ? 'current' : false },
      make('th', { scope: 'row' }, sizes.length > 1 ? `${sizes[0]} \u2013 ${sizes[sizes.length - 1]}` : sizes[0]), make('td', {}, set(value))));
  return make('div', { class: 'tip' }, make('b', {}, answer.name.replaceAll('_', ' ')), make('table', { class: 'tip-values' }, make('tbody', {}, ...rows)));
}

/** Neighbouring sizes with one value stand in one row. */
function grouped(all) {
  const rows = [];
  for (const [size, value] of all) {
    const last = rows[rows.length - 1];
    if (last && last[1] === value) last[0].push(size);
    else rows.push([[size], value]);
  }
  return rows;
}

/** Where a name is said: the place of its own statement. */
function saidAt(state, at) {
  return placeAt(state, at)?.[2] ?? null;
}

function placeAt(state, at) {
  const found = nameAt(state, at);
  if (!found) return null;
  const names = [found.name.includes('.') ? found.name : `${found.owner}.${found.name}`, found.name];
  for (const name of names) {
    const place = get('places').find((each) => each[0] === name);
    if (place) return place;
  }
  return null;
}

function go(view, at) {
  const to = saidAt(view.state, at);
  if (to === null) return false;
  view.dispatch({ selection: { anchor: to }, effects: EditorView.scrollIntoView(to, { y: 'center' }) });
  return true;
}

/** Opens the field for another name of the thing that the name under the caret is of. */
function rename(view) {
  const place = placeAt(view.state, view.state.selection.main.head);
  const thing = place && thingOf(place[0], place[1]);
  if (!thing) return false;
  openRenaming(thing);
  return true;
}

/** Values under the pointer and the way to where a name is said. */
export function meanings() {
  return [
    tip,
    keymap.of([{ key: 'F2', run: (view) => rename(view) }, { key: 'F12', run: (view) => go(view, view.state.selection.main.head) }]),
    EditorView.domEventHandlers({
      mousedown(event, view) {
        if (!event.ctrlKey && !event.metaKey) return false;
        const at = view.posAtCoords({ x: event.clientX, y: event.clientY });
        return at !== null && go(view, at);
      },
    }),
    EditorView.contentAttributes.of({ title: '', 'aria-description': TEXT.keys }),
  ];
}
