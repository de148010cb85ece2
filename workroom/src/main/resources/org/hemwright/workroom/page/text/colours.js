// The colours of the document. Which words are fixed comes from the server's table of forms.
import { HighlightStyle, StreamLanguage, syntaxHighlighting } from '@codemirror/language';
import { tags } from '@lezer/highlight';
import { EditorView } from '@codemirror/view';
import { ask, ready } from '../line.js';

let first = new Set();
let fixed = new Set();

const language = StreamLanguage.define({
  startState: () => ({ start: true }),
  token(stream, state) {
    if (stream.sol()) state.start = true;
    if (stream.eatSpace()) return null;
    const start = state.start;
    state.start = false;
    if (stream.match(/^#.*/)) return 'comment';
    if (stream.match(/^"(?:[^"]|"")*"?/)) return 'string';
    if (stream.match(/^\d+(?:\.\d+)?(?: \d+\/\d+|\/\d+)?(?:\s*(?:mm|cm|in|deg)\b|%)?/)) return 'number';
    const word = stream.match(/^[\p{L}][\p{L}\p{N}_]*/u);
    if (word) {
      if (stream.peek() === '.') return 'name';
      if (start && first.has(word[0])) return 'keyword';
      return fixed.has(word[0]) ? 'modifier' : 'name';
    }
    stream.next();
    return null;
  },
  languageData: { commentTokens: { line: '#' } },
});

const style = HighlightStyle.define([
  { tag: tags.comment, class: 'tok-note' },
  { tag: tags.string, class: 'tok-words' },
  { tag: tags.number, class: 'tok-number' },
  { tag: tags.keyword, class: 'tok-first' },
  { tag: tags.modifier, class: 'tok-fixed' },
]);

/** The editor's dress; that of the booklet's words is the same. */
export const theme = EditorView.theme({
  '&': { height: '100%', backgroundColor: 'transparent', color: 'var(--ink)', fontSize: '13.5px' },
  '&.cm-focused': { outline: 'none' },
  '.cm-scroller': { fontFamily: 'var(--mono)', lineHeight: '1.55' },
  '.cm-content': { caretColor: 'var(--ink)', padding: '6px 0 120px' },
  '.cm-gutters': { backgroundColor: 'transparent', color: 'var(--ink-soft)', border: '0' },
  '.cm-lineNumbers .cm-gutterElement': { padding: '0 10px 0 14px', minWidth: '40px' },
  '.cm-activeLine, .cm-activeLineGutter': { backgroundColor: 'color-mix(in srgb, var(--rule) 35%, transparent)' },
  '.cm-cursor': { borderLeftColor: 'var(--ink)' },
  '&.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground, .cm-selectionBackground': { backgroundColor: 'var(--chalk-wash)' },
  '.cm-selectionMatch': { backgroundColor: 'color-mix(in srgb, var(--brass) 22%, transparent)' },
  '.cm-panels': { backgroundColor: 'var(--lift)', color: 'var(--ink)', borderBottom: '1px solid var(--rule)' },
  '.cm-tooltip': { backgroundColor: 'var(--lift)', color: 'var(--ink)', border: '1px solid var(--rule-strong)', borderRadius: '4px', boxShadow: '0 3px 14px var(--shade)' },
});

/** Language, colours and dress of the editor, once the words are known. */
export async function colours() {
  await ready;
  const head = await ask('forms');
  first = new Set(head.first);
  fixed = new Set(head.fixed);
  return [language, syntaxHighlighting(style), theme];
}
