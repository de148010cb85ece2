// What is wrong under the words, and its mend at one click; below the text it stands for keys, taps and screen readers.
import { StateEffect, StateField } from '@codemirror/state';
import { Decoration, EditorView, hoverTooltip, keymap, showPanel } from '@codemirror/view';
import { fill, make, set } from '../dom.js';
import { TEXT } from '../words/text.js';
import { mend } from './editor.js';

const shown = StateEffect.define();

const field = StateField.define({
  create: () => ({ problems: [], marks: Decoration.none }),
  update(value, transaction) {
    let now = value;
    if (transaction.docChanged) now = { problems: now.problems, marks: now.marks.map(transaction.changes) };
    for (const effect of transaction.effects) {
      if (!effect.is(shown)) continue;
      const length = transaction.newDoc.length;
      const problems = effect.value.filter((each) => each.from <= length);
      const ranges = problems
        .map((each) => ({ from: Math.min(each.from, Math.max(0, length - 1)), to: Math.min(length, Math.max(each.to, each.from + 1)), each }))
        .filter((range) => range.to > range.from)
        .map((range) => Decoration.mark({ class: `told-${range.each.status}`, problem: range.each }).range(range.from, range.to));
      now = { problems, marks: Decoration.set(ranges, true) };
    }
    return now;
  },
  provide: (it) => [EditorView.decorations.from(it, (value) => value.marks), showPanel.from(it, (value) => (value.problems.length > 0 ? panel : null))],
});

const tip = hoverTooltip((view, at) => {
  const found = [];
  let from = at;
  let to = at;
  view.state.field(field).marks.between(at, at, (start, end, value) => {
    found.push(value.spec.problem);
    from = start;
    to = end;
  });
  if (found.length === 0) return null;
  return { pos: from, end: to, above: true, create: () => ({ dom: make('div', { class: 'tip' }, ...found.map(words)) }) };
});

/** A problem in words, with the button that mends it. */
export function words(problem) {
  return make('div', { class: `tip-problem ${problem.status}` }, make('p', {}, set(problem.message)),
      problem.mend ? make('p', { class: 'soft' }, set(problem.mend)) : null,
      problem.edit ? make('button', { type: 'button', onclick: () => mend(problem) }, TEXT.mend) : null);
}

/** Where a problem stands now: its mark moves with the text. */
function placeOf(state, problem) {
  const marks = state.field(field).marks.iter();
  for (; marks.value; marks.next()) if (marks.value.spec.problem === problem) return marks.from;
  return Math.min(problem.from, state.doc.length);
}

/** The problem that the caret stands at, else the next one after it, else the first. */
function nearest(state) {
  const { problems } = state.field(field);
  const line = state.doc.lineAt(state.selection.main.head).from;
  const sorted = [...problems].sort((a, b) => placeOf(state, a) - placeOf(state, b));
  return { sorted, at: Math.max(0, sorted.findIndex((each) => placeOf(state, each) >= line)) };
}

/** Puts the caret at the next problem, or the one before. */
function go(view, by) {
  const { sorted } = nearest(view.state);
  if (sorted.length === 0) return false;
  const head = view.state.selection.main.head;
  const places = sorted.map((each) => placeOf(view.state, each));
  const next = by > 0 ? places.find((at) => at > head) ?? places[0] : [...places].reverse().find((at) => at < head) ?? places[places.length - 1];
  view.dispatch({ selection: { anchor: next }, effects: EditorView.scrollIntoView(next, { y: 'center' }) });
  view.focus();
  return true;
}

function panel(view) {
  const dom = make('div', { class: 'slips', role: 'region', tabindex: '0', 'aria-label': TEXT.slips });
  let told = null;
  const render = (state) => {
    const { sorted, at } = nearest(state);
    const problem = sorted[at];
    const key = `${at} ${sorted.length} ${placeOf(state, problem)} ${problem.message}`;
    if (key === told) return;
    told = key;
    const button = (word, by) => make('button', { type: 'button', onclick: () => go(view, by) }, word);
    const line = TEXT.slip(at + 1, sorted.length, state.doc.lineAt(placeOf(state, problem)).number);
    const mended = problem.edit ? make('button', { type: 'button', onclick: () => mend(problem) }, TEXT.mend) : null;
    fill(dom, make('div', { role: 'status', class: `tip-problem ${problem.status}` }, make('p', {}, make('span', { class: 'soft' }, line), ' ', set(problem.message)),
        problem.mend ? make('p', { class: 'soft' }, set(problem.mend)) : null),
    mended || sorted.length > 1 ? make('div', { class: 'acts' }, mended, ...(sorted.length > 1 ? [button(TEXT.before, -1), button(TEXT.next, 1)] : [])) : null);
  };
  render(view.state);
  return { dom, update: (update) => { if (update.state.field(field).problems.length > 0) render(update.state); } };
}

export const problemsField = [field, tip, keymap.of([{ key: 'F8', run: (view) => go(view, 1), shift: (view) => go(view, -1) }])];

/** Shows problems under the words. */
export function showProblems(editor, problems) {
  editor.dispatch({ effects: shown.of(problems.filter((each) => each.from !== undefined)) });
}
