// Keeps the editor in step with the room: what is written here goes there as splices, one message at a time; what
// others write comes back and is laid under what is still on its way.
import { ChangeSet, Transaction } from '@codemirror/state';
import { ask, hear, ready } from '../line.js';
import { get } from '../state.js';

/** One text in step. */
export class Step {
  constructor(editor, file) {
    this.editor = editor;
    this.file = file;
    this.revision = 0;
    this.sent = null;
    this.waiting = null;
    this.joined = false;
    this.ready = false;
    hear('hello', () => { if (this.ready) this.begin(); });
  }

  /** Fetches the text. What was written while the line was down is written again. */
  async begin() {
    await ready;
    const head = await ask('text', { file: this.file });
    const mine = this.ready && (this.sent || this.waiting) ? this.editor.state.doc.toString() : null;
    this.whole(head);
    if (mine !== null && mine !== head.text) this.replace(mine, false);
  }

  whole(head) {
    this.sent = null;
    this.waiting = null;
    this.revision = head.revision;
    this.replace(head.text, true);
    this.ready = true;
  }

  replace(text, remote) {
    const now = this.editor.state.doc.toString();
    if (now === text) return;
    let from = 0;
    while (from < now.length && from < text.length && now[from] === text[from]) from++;
    let back = 0;
    while (back < now.length - from && back < text.length - from && now[now.length - 1 - back] === text[text.length - 1 - back]) back++;
    this.editor.dispatch({
      changes: { from, to: now.length - back, insert: text.slice(from, text.length - back) },
      annotations: remote ? [Transaction.remote.of(true), Transaction.addToHistory.of(false)] : [],
    });
  }

  /** Takes note of what was written here. */
  wrote(update) {
    const typed = update.transactions.every((each) => each.isUserEvent('input.type') || each.isUserEvent('delete'));
    let plain = typed;
    update.changes.iterChanges((a, b, c, d, text) => { if (text.lines > 1) plain = false; });
    this.last = plain ? Math.max(this.last ?? -1, 0) : -1;
    const near = this.end !== undefined && Math.abs(update.startState.selection.main.head - this.end) < 2;
    this.joined = plain && near && this.plain;
    this.plain = plain;
    this.end = update.state.selection.main.head;
    this.waiting = this.waiting ? this.waiting.compose(update.changes) : update.changes;
    this.send();
  }

  async send() {
    if (this.sent || !this.waiting || !this.ready) return;
    this.sent = this.waiting;
    this.waiting = null;
    const splices = [];
    this.sent.iterChanges((from, to, newFrom, newTo, text) => splices.push({ at: from, length: to - from, text: text.toString() }), true);
    try {
      await ask('edit', { file: this.file, base: this.revision, joined: this.joined, splices });
    } catch {
      if (this.sent) await this.begin().catch(() => {});
    }
  }

  /** Hears what the room made of it, or what others wrote. */
  told(head) {
    if (!this.ready) return;
    this.revision = head.revision;
    const own = head.by === get('window') && this.sent;
    if (own) {
      this.sent = null;
    } else {
      for (const splice of head.splices) {
        if (splice.file === this.file) this.lay(splice);
      }
    }
    if (!this.sent && !this.waiting && head.after[this.file] !== hash(this.editor.state.doc.toString())) this.begin();
    this.send();
  }

  lay(splice) {
    let length = this.editor.state.doc.length;
    if (this.waiting) length = this.waiting.length;
    if (this.sent) length = this.sent.length;
    let change = ChangeSet.of({ from: splice.at, to: splice.at + splice.length, insert: splice.text }, length);
    if (this.sent) {
      const over = change.map(this.sent, true);
      this.sent = this.sent.map(change);
      change = over;
    }
    if (this.waiting) {
      const over = change.map(this.waiting, true);
      this.waiting = this.waiting.map(change);
      change = over;
    }
    this.editor.dispatch({ changes: change, annotations: [Transaction.remote.of(true), Transaction.addToHistory.of(false)] });
  }
}

/** As the room hashes a text. */
function hash(text) {
  let value = 0;
  for (let i = 0; i < text.length; i++) value = (31 * value + text.charCodeAt(i)) | 0;
  return value;
}
