// What may be written next, as the table of forms and the plan have it; asked of the server, shown by the editor.
import { autocompletion, completionKeymap } from '@codemirror/autocomplete';
import { keymap } from '@codemirror/view';
import { ask } from '../line.js';

const KINDS = { word: 'keyword', point: 'constant', line: 'property', piece: 'class', number: 'variable', size: 'enum' };

async function proposals(context) {
  const word = context.matchBefore(/[\p{L}\p{N}_]*/u);
  const line = context.state.doc.lineAt(context.pos);
  const before = context.state.doc.sliceString(0, context.pos);
  const starts = /^\s*$/.test(line.text.slice(0, context.pos - line.from));
  if (!context.explicit && word.from === word.to && (starts || !/[\s.]$/.test(before))) return null;
  let answer;
  try {
    answer = await ask('complete', { before });
  } catch {
    return null;
  }
  if (answer.options.length === 0 || context.aborted) return null;
  return {
    from: answer.from,
    validFor: /^[\p{L}\p{N}_]*$/u,
    options: answer.options.map((each, index) => ({
      label: each.label, type: KINDS[each.kind], detail: each.kind === 'word' ? undefined : each.kind,
      info: each.detail, boost: -index / 10,
    })),
  };
}

/** Completion for the editor. */
export function completion() {
  return [autocompletion({ override: [proposals], icons: false, activateOnTypingDelay: 120 }), keymap.of(completionKeymap)];
}
