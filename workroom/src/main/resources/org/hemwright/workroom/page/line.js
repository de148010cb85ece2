// The line to the server: questions with answers, and what it tells unasked.
import { LINE } from './words/line.js';

const waiting = new Map();
const hearers = new Map();
let socket = null;
let number = 0;
let tries = 0;

/** What tells of a change rather than of how things stand: whoever comes later must not hear it again. */
const PASSING = new Set(['hello', 'line', 'pieces', 'splices', 'outside', 'photograph']);
const latest = new Map();

/** Hears what is told under a word; of how things stand, what was told last is heard at once. */
export function hear(word, hearer) {
  if (!hearers.has(word)) hearers.set(word, []);
  hearers.get(word).push(hearer);
  if (latest.has(word)) queueMicrotask(() => hearer(latest.get(word)));
}

/** Asks something; the answer's head, with its numbers, or a refusal thrown. */
export function ask(word, fields = {}) {
  return new Promise((resolve, reject) => {
    if (!socket || socket.readyState !== WebSocket.OPEN) {
      reject(new Error(LINE.down));
      return;
    }
    const id = ++number;
    waiting.set(id, { resolve, reject });
    socket.send(JSON.stringify({ id, ask: word, ...fields }));
  });
}

/** While a button is pressed nothing is told: it might be drawn anew under the pointer, and the click be lost. */
const PRESSED = 'button, label, summary, a, input[type=checkbox], input[type=radio]';
const kept = [];
let pressed = false;
addEventListener('pointerdown', (event) => { pressed = Boolean(event.target.closest?.(PRESSED)); }, true);
for (const end of ['pointerup', 'pointercancel', 'blur']) addEventListener(end, () => setTimeout(letGo), true);

function letGo() {
  pressed = false;
  for (const head of kept.splice(0)) told(head);
}

let firstOpen;
/** Kept once the line is open for the first time. */
export const ready = new Promise((resolve) => { firstOpen = resolve; });

/** Opens the line, and opens it again whenever it breaks. */
export function open() {
  const address = new URL('line', location.href);
  address.protocol = 'ws:';
  socket = new WebSocket(address);
  socket.binaryType = 'arraybuffer';
  socket.onopen = () => { tries = 0; firstOpen(); told({ tell: 'line', up: true }); };
  socket.onmessage = (event) => {
    const head = read(event.data);
    if (pressed) kept.push(head);
    else told(head);
  };
  socket.onclose = () => {
    for (const each of waiting.values()) each.reject(new Error(LINE.broke));
    waiting.clear();
    told({ tell: 'line', up: false });
    setTimeout(open, Math.min(4000, 250 * 2 ** tries++));
  };
}

function read(buffer) {
  const length = new DataView(buffer).getUint32(0, true);
  const head = JSON.parse(new TextDecoder().decode(new Uint8Array(buffer, 4, length)));
  head.numbers = new Float32Array(buffer, 4 + length);
  return head;
}

function told(head) {
  if (head.answer !== undefined) {
    const asked = waiting.get(head.answer);
    waiting.delete(head.answer);
    if (!asked) return;
    if (head.refused) asked.reject(new Error(head.refused));
    else asked.resolve(head);
    return;
  }
  if (!PASSING.has(head.tell)) latest.set(head.tell, head);
  for (const hearer of hearers.get(head.tell) ?? []) hearer(head);
}
