// The document: an editor in step with every other window, its colours and mends from the server.
import { EditorState, StateEffect, StateField, Transaction } from '@codemirror/state';
import { Decoration, EditorView, drawSelection, highlightActiveLine, highlightActiveLineGutter, keymap, lineNumbers } from '@codemirror/view';
import { defaultKeymap, indentWithTab } from '@codemirror/commands';
import { bracketMatching, indentUnit } from '@codemirror/language';
import { highlightSelectionMatches, search, searchKeymap } from '@codemirror/search';
import { make } from '../dom.js';
import { ask, hear } from '../line.js';
import { get, put, select, watch } from '../state.js';
import { TEXT } from '../words/text.js';
import { colours } from './colours.js';
import { completion } from './proposals.js';
import { meanings } from './meanings.js';
import { problemsField, showProblems } from './problems.js';
import { Step } from './step.js';
import { DOCUMENT, layText, turnTo } from './texts.js';
import { thingOf } from './things.js';
import { typed } from './typed.js';

let editor = null;
let step = null;
let following = false;

const mark = StateEffect.define();
const marked = StateField.define({
  create: () => Decoration.none,
  update(set, transaction) {
    let now = set.map(transaction.changes);
    for (const effect of transaction.effects) {
      if (effect.is(mark)) {
        now = effect.value ? Decoration.set([Decoration.mark({ class: 'told-here' }).range(effect.value[0], effect.value[1])]) : Decoration.none;
      }
    }
    return now;
  },
  provide: (field) => EditorView.decorations.from(field),
});

/** Starts the editor; its text comes with the answer. */
export async function startEditor() {
  const place = make('div', { class: 'text-place' });
  layText(DOCUMENT, place);
  const nonce = document.querySelector('script[nonce]').nonce;
  const extensions = [
    EditorView.cspNonce.of(nonce),
    lineNumbers(), highlightActiveLine(), highlightActiveLineGutter(), drawSelection(), bracketMatching(),
    EditorView.lineWrapping, highlightSelectionMatches(), search({ top: true }), indentUnit.of('  '), EditorState.tabSize.of(2),
    await colours(), marked, typed, problemsField, completion(), meanings(),
    keymap.of([...searchKeymap.filter((each) => !/z|y/i.test(each.key ?? '')), indentWithTab, ...defaultKeymap]),
    EditorView.contentAttributes.of({ 'aria-label': TEXT.title, spellcheck: 'false', tabindex: '0' }),
    EditorView.updateListener.of(updated),
  ];
  editor = new EditorView({ state: EditorState.create({ doc: '', extensions }) });
  step = new Step(editor, DOCUMENT);
  hear('splices', (head) => step.told(head));
  await step.begin();
  // Nothing can be written before the text is there.
  place.append(editor.dom);
  watch(['problems'], problems);
  watch(['selected', 'places'], follow);
  problems();
  follow();
}

hear('said', (head) => {
  put({ places: head.places, placesOf: head.revision, problems: head.problems });
});

function problems() {
  showProblems(editor, get('problems').filter((each) => each.file === DOCUMENT).map((each) => step.now(each)));
}

function updated(update) {
  if (update.docChanged && !update.transactions.some((each) => each.annotation(Transaction.remote))) step.wrote(update);
  if (update.selectionSet && !update.docChanged && !following && editor.hasFocus) selectHere(update.state.selection.main.head);
}

/** The thing that the words under the caret say is selected. */
function selectHere(at) {
  let best = null;
  for (const [name, kind, start, end] of get('places')) {
    const [from, to] = [here(start), here(end)];
    if (from <= at && at <= to && (!best || to - from < best.to - best.from)) best = { name, kind, from, to };
  }
  const thing = best && thingOf(best.name, best.kind);
  if (thing) select(thing, 'text');
}

/** Where a thing is said. */
export function placeOf(thing) {
  if (!thing) return null;
  const name = thing.kind === 'piece' ? thing.piece : thing.kind === 'notch' ? `${thing.piece}#${thing.name}`
    : thing.piece ? `${thing.piece}.${thing.name}` : thing.name;
  return get('places').find((each) => each[0] === name && each[1] === thing.kind) ?? null;
}

/** Shows the words that said what is selected. */
function follow() {
  if (!editor) return;
  const selected = get('selected');
  const place = placeOf(selected);
  const [from, to] = place ? [here(place[2]), here(place[3])] : [0, 0];
  if (from >= to) {
    editor.dispatch({ effects: mark.of(null) });
    return;
  }
  const effects = [mark.of([from, to])];
  following = true;
  if (selected.by !== 'text') effects.push(EditorView.scrollIntoView(from, { y: 'center' }));
  editor.dispatch({ effects });
  following = false;
}

/** Where a place of the document, as it was told last, is in the editor now. */
export function here(at) {
  return step.here(at, get('placesOf'));
}

/** Puts the caret at a place of the document, as it was at a revision, and the editor before it. */
export function goTo(from, revision, focus = true) {
  if (!step?.ready) return;
  turnTo(DOCUMENT);
  const at = step.here(from, revision);
  editor.dispatch({ selection: { anchor: at }, effects: EditorView.scrollIntoView(at, { y: 'center' }) });
  if (focus) editor.focus();
}

/** Changes a text as a finding says; where she has written there since, it stays, and is told anew. */
export function mend({ edit, revision }) {
  return ask('edit', { file: edit.file, base: revision, name: 'mend', splices: [{ at: edit.at, length: edit.length, text: edit.text }] }).catch(() => {});
}
