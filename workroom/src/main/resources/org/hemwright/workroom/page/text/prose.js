// The words of the booklet: an editor beside the booklet as it will be read.
import { EditorState, Transaction } from '@codemirror/state';
import { EditorView, drawSelection, highlightActiveLine, keymap } from '@codemirror/view';
import { autocompletion, completionKeymap, startCompletion } from '@codemirror/autocomplete';
import { defaultKeymap } from '@codemirror/commands';
import { HighlightStyle, StreamLanguage, syntaxHighlighting } from '@codemirror/language';
import { search, searchKeymap } from '@codemirror/search';
import { tags } from '@lezer/highlight';
import { make } from '../dom.js';
import { ask, hear } from '../line.js';
import { put } from '../state.js';
import { askAfter } from '../written.js';
import { TEXT } from '../words/text.js';
import { theme } from './colours.js';
import { problemsField, showProblems } from './problems.js';
import { Step } from './step.js';
import { WORDS, layText, turnTo } from './texts.js';
import { typed } from './typed.js';

let editor = null;
let step = null;

const language = StreamLanguage.define({
  startState: () => ({ depth: 0 }),
  token(stream, state) {
    if (stream.sol() && stream.match(/^#{1,3} .*/)) return 'keyword';
    if (stream.sol() && stream.match(/^>.*/)) return 'comment';
    if (stream.match(/^\{(?:table|figure|picture|number|stretch|title|version|dated|by)\b[^}\n]*\}?/)) return 'number';
    if (stream.match(/^\{for\b[^:}\n]*:?/)) { state.depth += 1; return 'number'; }
    if (state.depth > 0 && stream.eat('}')) { state.depth -= 1; return 'number'; }
    if (stream.match(/^\*\*[^*\n]+\*\*|^\*[^*\n]+\*|^_[^_\n]+_(?!\w)/)) return 'string';
    if (stream.match(/^\[[^\]\n]*\]\([^)\n]*\)/)) return 'string';
    stream.next();
    stream.match(/^[^{}*_[\n]+/);
    return null;
  },
  blankLine(state) { state.depth = 0; },
});

const style = HighlightStyle.define([
  { tag: tags.comment, class: 'tok-note' },
  { tag: tags.string, class: 'tok-words' },
  { tag: tags.number, class: 'tok-number' },
  { tag: tags.keyword, class: 'tok-first' },
]);

async function proposals(context) {
  const before = context.state.doc.sliceString(0, context.pos);
  const line = context.state.doc.lineAt(context.pos).text.slice(0, context.pos - context.state.doc.lineAt(context.pos).from);
  if (!context.explicit && !/(^#{1,2} [^:]*|\{[^}]*)$/.test(line)) return null;
  let answer;
  try {
    answer = await ask('complete_words', { before });
  } catch {
    return null;
  }
  if (answer.options.length === 0 || context.aborted) return null;
  return {
    from: answer.from,
    validFor: /^[\p{L}\p{N}_.-]*$/u,
    options: answer.options.map((each, index) => ({
      label: each.label.trim(), detail: each.detail || TEXT.kinds[each.kind], boost: -index / 10, apply: (view, option, from, to) => write(view, each, from, to),
    })),
  };
}

/** Writes what was chosen, with the brace that ends its place; goes on proposing where more follows. */
function write(view, chosen, from, to) {
  const after = view.state.doc.sliceString(to, to + 1);
  const heading = chosen.kind === 'part' || chosen.kind === 'step';
  const ends = chosen.closes && after !== '}' ? '}' : '';
  const colon = ['view', 'cloth'].includes(chosen.kind) && !chosen.closes ? ': ' : '';
  const text = chosen.label + ends + colon;
  const steps = chosen.closes && after === '}' ? 1 : 0;
  view.dispatch({ changes: { from, to, insert: text }, selection: { anchor: from + text.length + steps }, userEvent: 'input.complete' });
  if (!heading && /\s$/.test(chosen.label)) setTimeout(() => startCompletion(view), 30);
}

/** Makes the editor; its text comes with the answer. */
export async function startProse() {
  const place = make('div', { class: 'text-place words-place' });
  const nonce = document.querySelector('script[nonce]').nonce;
  const extensions = [
    EditorView.cspNonce.of(nonce),
    highlightActiveLine(), drawSelection(), EditorView.lineWrapping, search({ top: true }),
    language, syntaxHighlighting(style), theme, typed, problemsField,
    autocompletion({ override: [proposals], icons: false, activateOnTypingDelay: 120 }),
    keymap.of([...completionKeymap, ...searchKeymap.filter((each) => !/z|y/i.test(each.key ?? '')), ...defaultKeymap]),
    EditorView.contentAttributes.of({ 'aria-label': TEXT.names[WORDS], 'aria-description': TEXT.wordsKeys, spellcheck: 'true', tabindex: '0' }),
    EditorView.updateListener.of(updated),
  ];
  editor = new EditorView({ state: EditorState.create({ doc: '', extensions }) });
  step = new Step(editor, WORDS);
  hear('splices', (head) => step.told(head));
  await step.begin();
  place.append(editor.dom);
  layText(WORDS, place);
  hear('booklet', (head) => showProblems(editor, head.findings.filter((each) => each.file === WORDS).map(whole)));
}

/** What is amiss, marked as far as it reaches: the words that would be mended, or the place in its braces. */
function whole(found) {
  const { edit } = found;
  const problem = step.now(edit?.length ? { ...found, from: edit.at, to: edit.at + edit.length } : found);
  if (edit?.length) return problem;
  const text = editor.state.doc.toString();
  if (text[problem.from] !== '{') return problem;
  const line = (text.indexOf('\n', problem.from) + 1 || text.length + 1) - 1;
  const brace = text.indexOf('}', problem.from) + 1;
  return { ...problem, to: brace && brace < line ? brace : line };
}

let timer = 0;
function updated(update) {
  if (update.docChanged && !update.transactions.some((each) => each.annotation(Transaction.remote))) step.wrote(update);
  if ((update.selectionSet || update.docChanged) && editor.hasFocus) {
    clearTimeout(timer);
    timer = setTimeout(tell, 160);
  }
}

/** Which part and step the caret stands in: the booklet beside it turns there. */
async function tell() {
  const before = editor.state.doc.sliceString(0, editor.state.selection.main.head);
  try {
    const { part, step: name } = await ask('words_where', { before });
    if (editor.hasFocus) put({ writing: { part, step: name } });
  } catch {
    // The next move of the caret tells anew.
  }
}

/** Puts the caret at a place of the words, as they were at a revision. */
export async function goToWords(from, revision) {
  await turnTo(WORDS);
  const at = step.here(from, revision);
  editor.dispatch({ selection: { anchor: at }, effects: EditorView.scrollIntoView(at, { y: 'center' }) });
  editor.focus();
}

/** Makes room for words of a part or a step, and puts the caret there. */
export async function writeFor(part, name = '') {
  await turnTo(WORDS);
  const { caret, revision } = await askAfter('words_for', { part, step: name });
  await goToWords(caret, revision);
}
