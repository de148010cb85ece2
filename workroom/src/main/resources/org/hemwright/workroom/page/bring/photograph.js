// A photograph of a paper piece: what tells its size is found or pointed at, its outline is corrected on the picture.
import { fill, make, set } from '../dom.js';
import { ask, hear } from '../line.js';
import { PHOTOGRAPH } from '../words/bring.js';
import { correcting } from './correct.js';
import { choice, field, troubles, typed } from './fields.js';
import { fileField } from './parcel.js';
import { pointing } from './pointing.js';

let seen = null;
let place = null;
let guide = 'card';
let ruler = '30 cm';
let chosen = 0;
let work = null;
let trouble = '';
let reading = false;

/** Fills the sheet and the page beside it. */
export function showPhotograph(holder) {
  place = holder;
  if (seen) build();
  else start();
  return () => { place = null; };
}

function start() {
  fill(place.sheet, make('h2', {}, PHOTOGRAPH.title), make('p', { class: 'bring-hint' }, PHOTOGRAPH.hint),
      fileField({ label: PHOTOGRAPH.choose, accept: '.jpg,.jpeg,.png,image/jpeg,image/png', take: () => read({}) }),
      make('p', {}, make('button', { type: 'button', onclick: card }, PHOTOGRAPH.card)));
  place.aside();
}

async function card() {
  const answer = await ask('reference card');
  const bytes = Uint8Array.from(atob(answer.pdf), (letter) => letter.charCodeAt(0));
  const link = make('a', { href: URL.createObjectURL(new Blob([bytes], { type: 'application/pdf' })), download: 'reference-card.pdf' });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

async function read(told) {
  await ask('photograph', told);
  reading = true;
  if (place) fill(place.sheet, make('h2', {}, PHOTOGRAPH.title), make('p', { class: 'bring-note', role: 'status' }, PHOTOGRAPH.reading));
}

hear('photograph', (head) => {
  if (!reading) return;
  reading = false;
  seen = head;
  trouble = '';
  chosen = 0;
  if (place) build();
});

function build() {
  const named = make('h2', {}, PHOTOGRAPH.file(seen.file));
  if (!seen.picture) {
    fill(place.sheet, named, ...troubles(seen.problems, set));
    place.aside(make('div', { class: 'acts' }, another()));
  } else if (seen.pieces) {
    work = correcting(seen.picture, seen.box, seen.pieces[chosen], aside);
    fill(place.sheet, named, ...troubles(seen.problems, set), work.look);
    aside();
  } else {
    const told = make('p', { role: 'status', class: 'bring-note' });
    work = pointing(seen.picture, seen.width, seen.height, () => { tellPointed(told); aside(); });
    work.wants(guide === 'card' ? 4 : 2);
    fill(place.sheet, named, ...troubles(seen.problems, set), told, work.look);
    tellPointed(told);
    aside();
  }
}

function tellPointed(told) {
  const count = work.places.length;
  const all = count === (guide === 'card' ? 4 : 2);
  told.textContent = all ? PHOTOGRAPH.allPointed : guide === 'card' ? PHOTOGRAPH.nextCorner(PHOTOGRAPH.corners[count]) : PHOTOGRAPH.nextMark(count);
}

const another = () => make('button', { type: 'button', onclick: () => { seen = null; start(); } }, PHOTOGRAPH.another);
const amiss = () => (trouble ? make('p', { class: 'grid-problem fail', role: 'alert' }, trouble) : null);

function aside() {
  if (!place) return;
  if (seen.pieces) outlineAside();
  else guideAside();
}

function guideAside() {
  const all = work.places.length === (guide === 'card' ? 4 : 2);
  place.aside(
      make('section', {}, make('h3', {}, PHOTOGRAPH.point),
          choice(guide, [['card', PHOTOGRAPH.byCard], ['ruler', PHOTOGRAPH.byRuler]], (value) => { guide = value; build(); }, { 'aria-label': PHOTOGRAPH.point }),
          guide === 'ruler' ? field(PHOTOGRAPH.ruler, typed(ruler, (text) => { ruler = text; }, { class: 'short' })) : null,
          make('p', { class: 'soft' }, PHOTOGRAPH.keys)),
      amiss(),
      make('div', { class: 'acts' },
          make('button', { type: 'button', class: 'chief', disabled: !all, onclick: straighten }, PHOTOGRAPH.read),
          make('button', { type: 'button', onclick: () => build() }, PHOTOGRAPH.again), another()));
}

async function straighten() {
  try {
    await read(guide === 'card' ? { card: work.places } : { marks: work.places, ruler });
  } catch (refused) {
    trouble = refused.message;
    aside();
  }
}

function outlineAside() {
  const piece = seen.pieces[chosen];
  const tool = make('div', { class: 'photo-tools', role: 'group', 'aria-label': PHOTOGRAPH.correct }, ...Object.entries(PHOTOGRAPH.tools).map(([name, words]) =>
    make('button', { type: 'button', 'aria-pressed': String(work.tool() === name), onclick: () => { work.take(name); aside(); } }, words)));
  place.aside(
      make('p', { class: 'photo-doubt' }, PHOTOGRAPH.doubt(Math.max(0.1, piece.doubt).toFixed(1))),
      seen.pieces.length > 1 ? field(PHOTOGRAPH.which, choice(String(chosen), seen.pieces.map((each, index) => [String(index), PHOTOGRAPH.whichOf(index + 1)]), (value) => { chosen = Number(value); build(); })) : null,
      make('section', {}, make('h3', {}, PHOTOGRAPH.correct), tool,
          make('p', { class: 'soft' }, PHOTOGRAPH.toolHints[work.tool()] || PHOTOGRAPH.correctHint),
          make('p', { class: 'soft', role: 'status' }, [PHOTOGRAPH.notches(work.notches().length), work.grain() ? PHOTOGRAPH.grainDrawn : ''].filter(Boolean).join('. '))),
      amiss(),
      make('div', { class: 'acts' },
          make('button', { type: 'button', disabled: !work.changed(), onclick: () => work.back() }, PHOTOGRAPH.back),
          make('button', { type: 'button', class: 'chief', onclick: goOn }, PHOTOGRAPH.on), another()));
}

async function goOn() {
  try {
    await ask('photograph drawing', { ...work.outline(), notches: work.notches(), ...(work.grain() ? { grain: work.grain() } : {}) });
  } catch (refused) {
    trouble = refused.message;
    aside();
    return;
  }
  seen = null;
  await place.toDrawing();
}
