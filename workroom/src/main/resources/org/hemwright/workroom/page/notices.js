// What another program did to the files, and what she wants done about it.
import { fill, make } from './dom.js';
import { ask, hear } from './line.js';
import { get, watch } from './state.js';
import { ROOM } from './words/room.js';

const MOST_LINES = 4;
let shown = '';
let letBe = '';

/** Starts to listen. */
export function startNotices() {
  hear('outside', outside);
  hear('settled', (head) => { if (shown.startsWith(`outside ${head.file} `)) hide(); });
  watch(['missing'], missing);
}

function show(key, ...parts) {
  const notice = document.getElementById('notice');
  shown = key;
  fill(notice, ...parts);
  notice.hidden = false;
}

function hide() {
  shown = '';
  document.getElementById('notice').hidden = true;
}

const act = (word, onclick) => make('button', { type: 'button', onclick }, word);

/** Both wrote at one place: the lines that differ stand one above the other. It is told again until she has said. */
function outside(head) {
  const key = `outside ${head.file} ${head.here} ${head.there}`;
  if (key === shown) return;
  const [here, there] = differing(head.here, head.there);
  const decide = (take) => { ask('outside', { file: head.file, take }).catch(() => {}); hide(); };
  show(key, make('p', {}, ROOM.outside(head.file)),
      make('dl', { class: 'notice-both', 'aria-label': ROOM.outsideLines },
          make('dt', {}, ROOM.here), make('dd', {}, make('code', {}, here)), make('dt', {}, ROOM.there), make('dd', {}, make('code', {}, there))),
      make('div', { class: 'acts' }, act(ROOM.keepMine, () => decide('here')), act(ROOM.takeTheirs, () => decide('there'))));
}

/** The lines from the first that differs to the last; long stretches are cut short. */
function differing(a, b) {
  const [here, there] = [a.split('\n'), b.split('\n')];
  let head = 0;
  while (head < here.length && head < there.length && here[head] === there[head]) head++;
  let tail = 0;
  while (tail < here.length - head && tail < there.length - head && here[here.length - 1 - tail] === there[there.length - 1 - tail]) tail++;
  const part = (lines) => {
    const own = lines.slice(head, lines.length - tail);
    return own.length > MOST_LINES ? [...own.slice(0, MOST_LINES), '\u2026'].join('\n') : own.join('\n') || '\u2013';
  };
  return [part(here), part(there)];
}

/** Files that were taken out of the folder. */
function missing() {
  const files = get('missing') ?? [];
  const key = `missing ${files.join(' ')}`;
  if (files.length === 0) {
    letBe = '';
    if (shown.startsWith('missing ')) hide();
    return;
  }
  if (key === letBe || key === shown) return;
  show(key, make('p', {}, ROOM.missing(files)), make('div', { class: 'acts' },
      act(ROOM.putBack, async () => { for (const file of files) await ask('put back', { file }).catch(() => {}); }),
      act(ROOM.letBe, () => { letBe = key; hide(); })));
}
