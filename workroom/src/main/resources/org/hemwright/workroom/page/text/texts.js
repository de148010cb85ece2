// Which text lies beside the table: the document, or the words of the booklet. The document is there from the start;
// the other editor is made when it is first turned to.
import { fill, make } from '../dom.js';
import { askAfter } from '../written.js';
import { watch, get } from '../state.js';
import { TEXT } from '../words/text.js';

export const DOCUMENT = 'pattern.hem';
export const WORDS = 'booklet.md';
const ORDER = [DOCUMENT, WORDS];
const LOAD = { [WORDS]: () => import('./prose.js').then((prose) => prose.startProse()) };

const places = new Map();
const loading = new Map();
let now = DOCUMENT;
let ways = null;

/** Puts an editor's place among the texts. */
export function layText(file, place) {
  const holder = document.getElementById('text');
  if (!ways) {
    ways = make('div', { class: 'text-ways', role: 'group', 'aria-label': TEXT.texts });
    holder.prepend(ways);
    watch(['job'], follow);
  }
  places.set(file, place);
  holder.append(place);
  show();
  if (file === DOCUMENT) follow();
}

/** Turns to a text; kept once its editor is there. */
export async function turnTo(file) {
  now = file;
  if (!places.has(file) && LOAD[file]) {
    if (!loading.has(file)) loading.set(file, LOAD[file]());
    await loading.get(file);
  }
  show();
}

/** Making has the words beside it, every other job the document. */
function follow() {
  const wanted = get('job') === 'making' ? WORDS : DOCUMENT;
  if (wanted !== now) turnTo(wanted).catch(() => {});
}

function show() {
  if (!ways) return;
  const focused = ways.contains(document.activeElement);
  fill(ways, ...ORDER.map((file) => make('button', {
    type: 'button', class: 'plain', 'aria-pressed': file === now ? 'true' : 'false', 'data-text': file, onclick: () => turnTo(file),
  }, TEXT.names[file])), now === DOCUMENT ? make('button', { type: 'button', class: 'plain neatly', onclick: setNeatly }, TEXT.neatly) : null,
  make('span', { class: 'soft', role: 'status' }));
  if (focused) ways.querySelector('[aria-pressed="true"]').focus();
  for (const [file, place] of places) place.hidden = file !== now;
  document.getElementById('text').setAttribute('aria-label', TEXT.names[now]);
}

/** Indents and columns of the document as it is usually written; undo takes it back. */
async function setNeatly() {
  const told = ways.querySelector('[role="status"]');
  try {
    const { lines } = await askAfter('set_neatly');
    told.textContent = TEXT.neat(lines);
  } catch (reason) {
    told.textContent = reason.message;
  }
  setTimeout(() => { told.textContent = ''; }, 4000);
}
