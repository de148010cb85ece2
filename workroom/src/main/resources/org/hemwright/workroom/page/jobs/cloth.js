// Cloth: what the size on the table takes on each width and fold, and how it is laid.
import { fill, make, set } from '../dom.js';
import { ask, hear } from '../line.js';
import { get, watch } from '../state.js';
import { CLOTH } from '../words/cloth.js';

export const wide = true;

let page = null;
let sheet = null;
let laid = null;
let progress = null;
let chosen = null;
let wanted = '';
const addresses = [];

hear('laying', (head) => { progress = head; if (sheet && head.size === sizeName()) tellProgress(); });
hear('laid', (head) => {
  if (head.size !== sizeName()) return;
  laid = head;
  progress = null;
  chosen = head.rows.find((row) => row.picture !== undefined) ?? null;
  for (const each of addresses.splice(0)) URL.revokeObjectURL(each);
  for (const svg of head.pictures) addresses.push(URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' })));
  if (sheet) draw();
});

watch(['size', 'revision'], () => { if (sheet) lay(); });

const sizeName = () => get('sizes')[get('size')];

export function show(holder) {
  page = holder.page;
  sheet = holder.sheet;
  lay();
  return () => { page = null; sheet = null; };
}

/** Asks once the tape stands still for a moment. */
function lay() {
  const key = `${get('revision')} ${get('size')}`;
  draw();
  if (key === wanted) return;
  wanted = key;
  setTimeout(() => {
    if (wanted === key && sheet) ask('lay', { size: get('size') }).catch(() => { wanted = ''; });
  }, 350);
}

function fresh() {
  return laid && laid.size === sizeName() && laid.revision === get('revision');
}

function tellProgress() {
  const place = sheet.querySelector('.laying');
  if (!place || !progress) return;
  fill(place, make('span', {}, CLOTH.laying(progress.size, progress.done, progress.of)),
      make('progress', { value: progress.done, max: Math.max(1, progress.of), 'aria-label': CLOTH.title(progress.size) }));
}

function draw() {
  const state = make('p', { class: 'laying soft', role: 'status' }, fresh() ? '' : CLOTH.waiting);
  if (!laid || laid.size !== sizeName()) {
    fill(sheet, make('h2', {}, CLOTH.title(sizeName())), state);
    fill(page, make('h2', {}, CLOTH.name), make('p', { class: 'soft' }, CLOTH.hint));
    return;
  }
  const picture = chosen?.picture === undefined ? null : make('figure', { class: 'laying-figure' },
      make('img', { src: addresses[chosen.picture], alt: CLOTH.alt(chosen, laid.size) }), make('figcaption', { class: 'soft' }, set(CLOTH.caption(chosen))));
  fill(sheet, make('h2', {}, CLOTH.title(laid.size)), state, picture);
  const headings = [...new Set(laid.rows.map((row) => row.heading))];
  fill(page, make('h2', {}, CLOTH.name), ...headings.map((heading) => make('section', { class: 'cloth-rows' }, make('h3', {}, heading),
      make('ul', {}, ...laid.rows.filter((row) => row.heading === heading).map(item)))));
}

function item(row) {
  const words = [make('span', {}, set(`${row.width}, ${row.fold}`)), make('span', { class: 'need' }, set(row.fits ? row.length : CLOTH.misfit(row.misfits)))];
  if (row.picture === undefined) return make('li', { class: `cloth-row${row.fits ? '' : ' misfit'}` }, ...words);
  return make('li', {}, make('button', {
    type: 'button', class: 'cloth-row best', 'aria-pressed': row === chosen ? 'true' : 'false', onclick: () => { chosen = row; draw(); },
  }, ...words));
}
