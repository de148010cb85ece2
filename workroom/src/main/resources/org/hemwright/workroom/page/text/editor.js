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
    await colours(), marked, problemsField, completion(), meanings(),
    keymap.of([...searchKeymap.filter((each) => !/z|y/i.test(each.key ?? '')), indentWithTab, ...defaultKeymap]),
    EditorView.contentAttributes.of({ 'aria-label': TEXT.title, spellcheck: 'false', tabindex: '0' }),
    EditorView.updateListener.of(updated),
  ];
  editor = new EditorView({ state: EditorState.create({ doc: '', extensions }), parent: place });
  step = new Step(editor, DOCUMENT);
  hear('splices', (head) => step.told(head));
  hear('text', (head) => { if (head.file === DOCUMENT) step.whole(head); });
  watch(['problems'], () => showProblems(editor, get('problems').filter((each) => each.file === DOCUMENT)));
  watch(['selected', 'places'], follow);
  await step.begin();
  showProblems(editor, get('problems').filter((each) => each.file === DOCUMENT));
  follow();
}

hear('said', (head) => {
  put({ places: head.places, problems: head.problems });
});

function updated(update) {
  if (update.docChanged && !update.transactions.some((each) => each.annotation(Transaction.remote))) step.wrote(update);
  if (update.selectionSet && !update.docChanged && !following && editor.hasFocus) selectHere(update.state.selection.main.head);
}

/** The thing that the words under the caret say is selected. */
function selectHere(at) {
  let best = null;
  for (const [name, kind, from, to] of get('places')) {
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
  const length = editor.state.doc.length;
  if (!place || place[3] > length) {
    editor.dispatch({ effects: mark.of(null) });
    return;
  }
  const effects = [mark.of([place[2], place[3]])];
  following = true;
  if (selected.by !== 'text') effects.push(EditorView.scrollIntoView(place[2], { y: 'center' }));
  editor.dispatch({ effects });
  following = false;
}

/** Puts the caret at a place of the document and the editor before it. */
export function goTo(from, focus = true) {
  if (!editor) return;
  turnTo(DOCUMENT);
  editor.dispatch({ selection: { anchor: Math.min(from, editor.state.doc.length) }, effects: EditorView.scrollIntoView(from, { y: 'center' }) });
  if (focus) editor.focus();
}

/** Changes the document as a mend says. */
export function mend(edit) {
  return ask('edit', { file: edit.file, base: get('revision'), name: 'mend', splices: [{ at: edit.at, length: edit.length, text: edit.text }] });
}
