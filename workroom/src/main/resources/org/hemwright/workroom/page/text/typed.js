// Letters are read as soon as they are typed. The editor hears of them by a watcher of its elements, which the browser
// calls only after other listeners have run; on a slow machine one for scrolling came first, the editor read the letter
// there with the caret not yet behind it, and the next letter stood before it. The browser calls the watcher after any
// listener, so one is put where a letter has just been typed.
import { EditorView } from '@codemirror/view';

export const typed = EditorView.domEventObservers({ input() {} });
