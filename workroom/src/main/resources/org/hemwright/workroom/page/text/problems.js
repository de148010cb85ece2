// What is wrong under the words, and its mend at one click.
import { StateEffect, StateField } from '@codemirror/state';
import { Decoration, EditorView, hoverTooltip } from '@codemirror/view';
import { make, set } from '../dom.js';
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
  provide: (it) => EditorView.decorations.from(it, (value) => value.marks),
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
      problem.edit ? make('button', { type: 'button', onclick: () => mend(problem.edit) }, TEXT.mend) : null);
}

export const problemsField = [field, tip];

/** Shows problems under the words. */
export function showProblems(editor, problems) {
  editor?.dispatch({ effects: shown.of(problems.filter((each) => each.from !== undefined)) });
}
