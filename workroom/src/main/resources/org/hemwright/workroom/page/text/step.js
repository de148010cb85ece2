// Keeps the editor in step with the room: what is written here goes there as splices, one message at a time; what
// others write comes back and is laid under what is still on its way. The text in the editor is always the text that
// the room had at `revision`, then what is sent, then what waits; nothing that comes from the room takes a written
// letter away or moves the caret out of its place among the letters.
import { ChangeSet, Text, Transaction } from '@codemirror/state';
import { ask, hear, ready } from '../line.js';
import { get } from '../state.js';

let edits = 0;

/** One text in step. */
export class Step {
  constructor(editor, file) {
    this.editor = editor;
    this.file = file;
    this.revision = 0;
    this.agreed = Text.empty;
    this.sent = null;
    this.waiting = null;
    this.joined = false;
    this.ready = false;
    this.refused = 0;
    hear('hello', () => { this.refused = 0; if (this.ready) this.anew().catch(() => {}); });
  }

  /** Fetches the text. */
  async begin() {
    await ready;
    this.whole(await ask('text', { file: this.file }));
  }

  /** The line was down: what was sent may have arrived or not, and what was written meanwhile is still to be sent. */
  async anew() {
    const lost = this.sent;
    const head = await ask('text', { file: this.file });
    if (lost && this.sent === lost) {
      if (lost.changes.apply(this.agreed).toString() === head.text) {
        this.agreed = lost.changes.apply(this.agreed);
      } else {
        this.waiting = this.waiting ? lost.changes.compose(this.waiting) : lost.changes;
      }
      this.sent = null;
    }
    this.revision = 0;
    this.whole(head);
  }

  /** Takes the room's text as it stands, under what is written here and not told there yet. */
  whole(head) {
    if (this.ready && head.revision < this.revision) return;
    const others = between(this.agreed.toString(), head.text);
    this.revision = head.revision;
    this.ready = true;
    if (others) this.lay(others);
    this.send();
  }

  /** Takes note of what was written here. */
  wrote(update) {
    const typed = update.transactions.every((each) => each.isUserEvent('input.type') || each.isUserEvent('delete'));
    let plain = typed;
    update.changes.iterChanges((a, b, c, d, text) => { if (text.lines > 1) plain = false; });
    const near = this.end !== undefined && Math.abs(update.startState.selection.main.head - this.end) < 2;
    this.joined = plain && near && this.plain;
    this.plain = plain;
    this.end = update.state.selection.main.head;
    this.waiting = this.waiting ? this.waiting.compose(update.changes) : update.changes;
    this.refused = 0;
    this.send();
  }

  /** Sends what waits. What was refused is sent once more as one stretch, then not before she writes on. */
  async send() {
    if (this.sent || !this.waiting || !this.ready || this.refused > 1) return;
    const mine = { changes: this.waiting, edit: ++edits };
    this.sent = mine;
    this.waiting = null;
    try {
      await ask('edit', { file: this.file, base: this.revision, edit: mine.edit, joined: this.joined, splices: this.splices(mine.changes) });
    } catch {
      // Refused, or the line broke: the text is agreed on anew here, or once the line is up.
      this.refused += 1;
    }
    if (this.sent === mine) await this.anew().catch(() => {});
  }

  splices(changes) {
    const splices = [];
    const add = (from, to, text) => splices.push({ at: from, length: to - from, text });
    if (this.refused) {
      const whole = between(this.agreed.toString(), changes.apply(this.agreed).toString());
      if (whole) add(whole.from, whole.to, whole.insert);
    } else {
      changes.iterChanges((from, to, newFrom, newTo, text) => add(from, to, text.toString()), true);
    }
    return splices;
  }

  /** Hears what the room made of it, or what others wrote. */
  told(head) {
    if (!this.ready || head.revision <= this.revision) return;
    this.revision = head.revision;
    if (this.sent && head.by === get('window') && head.edit === this.sent.edit) {
      this.agreed = this.sent.changes.apply(this.agreed);
      this.sent = null;
    } else {
      for (const { file, at, length, text } of head.splices) {
        if (file === this.file) this.lay({ from: at, to: at + length, insert: text });
      }
    }
    if (head.after[this.file] !== hash(this.agreed.toString())) this.anew().catch(() => {});
    this.send();
  }

  /** Changes the agreed text, and the editor's under what is on its way. */
  lay(splice) {
    let change = ChangeSet.of(splice, this.agreed.length);
    this.agreed = change.apply(this.agreed);
    if (this.sent) {
      const over = change.map(this.sent.changes, true);
      this.sent.changes = this.sent.changes.map(change);
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

/** The one stretch in which two texts differ, with what stands there afterwards. */
function between(before, after) {
  if (before === after) return null;
  let from = 0;
  while (from < before.length && from < after.length && before[from] === after[from]) from++;
  let back = 0;
  while (back < before.length - from && back < after.length - from && before[before.length - 1 - back] === after[after.length - 1 - back]) back++;
  return { from, to: before.length - back, insert: after.slice(from, after.length - back) };
}

/** As the room hashes a text. */
function hash(text) {
  let value = 0;
  for (let i = 0; i < text.length; i++) value = (31 * value + text.charCodeAt(i)) | 0;
  return value;
}
