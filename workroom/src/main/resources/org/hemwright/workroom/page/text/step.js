// Keeps the editor in step with the room: what is written here goes there as splices, one message at a time; what
// others write comes back and is laid under what is still on its way. The text in the editor is always the text that
// the room had at `revision`, then what is sent, then what waits; nothing that comes from the room takes a written
// letter away or moves the caret out of its place among the letters. The room makes an edit only of the text that it
// was written on; where another came first, the edit is laid over that here and sent again.
import { ChangeSet, Text, Transaction } from '@codemirror/state';
import { ask, hear, ready } from '../line.js';
import { get } from '../state.js';
import { countIn, tellUnsent } from '../written.js';

/** Places told of texts older than this many revisions are not followed any more. */
const REMEMBERED = 1000;

/** How long until a text that could not be had is asked for again (ms). */
const AGAIN = 1000;

let edits = 0;

/** One text in step. */
export class Step {
  constructor(editor, file) {
    this.editor = editor;
    this.file = file;
    this.revision = 0;
    this.agreed = Text.empty;
    this.ready = false;
    /** Whether something of the room's text is not known here: nothing is laid or sent until it is. */
    this.behind = true;
    /** Each edit: its changes, whether it goes on with the one before, and what is to be done once it is made. */
    this.sent = null;
    this.waiting = [];
    this.made = [];
    this.refused = 0;
    this.end = -1;
    countIn(this);
  }

  /** Fetches the text; kept once it is there. */
  begin() {
    return new Promise((done) => {
      this.begun = done;
      ready.then(() => this.anew());
      hear('hello', () => { this.refused = 0; this.anew(); });
    });
  }

  /** Agrees with the room anew: at the start, when the line was down, and where something is amiss. */
  async anew() {
    this.behind = true;
    const lost = this.sent?.edit;
    let head;
    try {
      head = await ask('text', { file: this.file, ...(this.ready ? { since: this.revision } : {}) });
    } catch {
      clearTimeout(this.timer);
      this.timer = setTimeout(() => { if (this.behind) this.anew(); }, AGAIN);
      return;
    }
    for (const each of head.missed) if (each.revision === this.revision + 1) this.take(each, this.sent && this.makes(each.splices));
    if (head.revision < this.revision) this.made = [];
    this.revision = head.revision;
    const others = between(this.agreed.toString(), head.text);
    if (others) this.lay(others);
    this.behind = false;
    this.ready = true;
    if (lost && this.sent?.edit === lost) this.putBack();
    this.begun();
    this.send();
  }

  /** Takes note of what was written here. */
  wrote(update) {
    let plain = update.transactions.every((each) => each.isUserEvent('input.type') || each.isUserEvent('delete'));
    update.changes.iterChanges((a, b, c, d, text) => { if (text.lines > 1) plain = false; });
    const joined = plain && this.plain && Math.abs(update.startState.selection.main.head - this.end) < 2;
    this.plain = plain;
    this.end = update.state.selection.main.head;
    const before = this.waiting.at(-1);
    if (joined && before?.then.length === 0) before.changes = before.changes.compose(update.changes);
    else this.waiting.push({ changes: update.changes, joined, then: [] });
    this.refused = 0;
    tellUnsent();
    this.send();
  }

  /** What lies between the agreed text and the editor's. */
  unmade() {
    return this.sent ? [this.sent, ...this.waiting] : this.waiting;
  }

  /** What was refused is sent once more as one stretch, then not before she writes on. */
  get stuck() {
    return this.refused > 1;
  }

  /** Sends what waits. */
  async send() {
    if (this.stuck) for (const each of this.waiting) for (const act of each.then.splice(0)) act();
    if (this.sent || this.behind || this.waiting.length === 0 || this.stuck) return;
    const edit = ++edits;
    this.sent = { ...this.waiting.shift(), edit };
    const { changes, joined } = this.sent;
    if (changes.empty) {
      this.done();
      this.send();
      return;
    }
    let answer = null;
    try {
      answer = await ask('edit', {
        file: this.file, base: this.revision, exactly: true, edit, joined, splices: this.splices(changes),
      });
    } catch {
      this.refused += 1;
    }
    if (this.sent?.edit !== edit) return;
    if (answer?.late) {
      this.putBack();
      this.send();
    } else {
      // Refused, or the line broke: the text is agreed on anew now, or once the line is up.
      this.anew();
    }
  }

  splices(changes) {
    const splices = [];
    if (this.refused) {
      const whole = between(this.agreed.toString(), changes.apply(this.agreed).toString());
      if (whole) splices.push({ at: whole.from, length: whole.to - whole.from, text: whole.insert });
    } else {
      changes.iterChanges((from, to, newFrom, newTo, text) => splices.push({ at: from, length: to - from, text: text.toString() }), true);
    }
    return splices;
  }

  /** Hears what the room made of it, or what others wrote. */
  told(head) {
    if (this.behind || head.revision <= this.revision) return;
    if (head.revision === this.revision + 1) {
      this.take(head, this.sent && head.by === get('window') && head.edit === this.sent.edit);
      if (head.after[this.file] === hash(this.agreed.toString())) {
        this.send();
        return;
      }
    }
    this.anew();
  }

  /** Takes a revision of the room. */
  take({ revision, splices }, own) {
    this.revision = revision;
    if (own) {
      this.done();
      return;
    }
    for (const { file, at, length, text } of splices) {
      if (file === this.file && at + length <= this.agreed.length) this.lay({ from: at, to: at + length, insert: text });
    }
  }

  /** What was sent is made. */
  done() {
    const { changes, then } = this.sent;
    this.agreed = changes.apply(this.agreed);
    this.remember(changes);
    this.sent = null;
    tellUnsent();
    for (const act of then) act();
  }

  /** What was sent is not made, and waits again. */
  putBack() {
    this.waiting.unshift(this.sent);
    this.sent = null;
  }

  /** Whether a revision makes of the agreed text just what the sent edit would. */
  makes(splices) {
    let text = this.agreed.toString();
    for (const each of splices) {
      if (each.file === this.file) text = text.slice(0, each.at) + each.text + text.slice(each.at + each.length);
    }
    return text === this.sent.changes.apply(this.agreed).toString();
  }

  /** Changes the agreed text, and the editor's under what is on its way. */
  lay(splice) {
    let change = ChangeSet.of(splice, this.agreed.length);
    this.agreed = change.apply(this.agreed);
    this.remember(change);
    for (const each of this.unmade()) {
      const over = change.map(each.changes, true);
      each.changes = each.changes.map(change);
      change = over;
    }
    this.end = change.mapPos(Math.min(Math.max(this.end, 0), change.length));
    this.editor.dispatch({ changes: change, annotations: [Transaction.remote.of(true), Transaction.addToHistory.of(false)] });
  }

  remember(changes) {
    this.made.push({ revision: this.revision, changes: changes.desc });
    if (this.made.length > REMEMBERED) this.made.shift();
  }

  /** Where a place of the room's text, as it was at a revision, is in the editor now. */
  here(at, revision) {
    let since = this.made.length;
    while (since > 0 && this.made[since - 1].revision > revision) since--;
    let place = at;
    for (const { changes } of [...this.made.slice(since), ...this.unmade()]) place = changes.mapPos(Math.min(place, changes.length), 1);
    return Math.min(place, this.editor.state.doc.length);
  }

  /** The same for what was found in the text. */
  now(found) {
    return found.from === undefined ? found : { ...found, from: this.here(found.from, found.revision), to: this.here(found.to, found.revision) };
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
