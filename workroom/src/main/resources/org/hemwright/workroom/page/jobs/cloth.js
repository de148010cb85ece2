// Cloth: what the size on the table takes on each width and fold, and how it is laid.
import { fill, make, set } from '../dom.js';
import { ask, hear } from '../line.js';
import { get, watch } from '../state.js';
import { CLOTH } from '../words/cloth.js';
import { board, leaveBoard } from './board.js';

export const wide = true;

let page = null;
let sheet = null;
let laid = null;
let progress = null;
let chosen = null;
let wanted = '';
let byHand = false;
const addresses = [];

hear('laying', (head) => { progress = head; if (sheet && head.size === sizeName()) tellProgress(); });
hear('laid', (head) => {
  if (head.size !== sizeName()) return;
  laid = head;
  progress = null;
  head.rows.forEach((row, at) => { row.at = at; });
  const same = chosen && head.rows.find((row) => row.heading === chosen.heading && row.width === chosen.width && row.fold === chosen.fold && row.fits);
  chosen = same || (head.rows.find((row) => row.picture !== undefined) ?? null);
  leaveBoard();
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
  return () => { page = null; sheet = null; leaveBoard(); };
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
  const findings = laid.findings.map((each) => make('p', { class: `grid-problem ${each.status}` }, set(each.message), ' ', set(each.mend)));
  fill(sheet, make('h2', {}, CLOTH.title(laid.size)), state, ...findings, chosen ? figure() : null);
  const headings = [...new Set(laid.rows.map((row) => row.heading))];
  fill(page, make('h2', {}, CLOTH.name), ...headings.map((heading) => make('section', { class: 'cloth-rows' }, make('h3', {}, heading),
      make('ul', {}, ...laid.rows.filter((row) => row.heading === heading).map(item)))));
}

/** The laying that is chosen: as a picture of the booklet, or on the board to be arranged by hand. */
function figure() {
  const pictured = chosen.picture !== undefined;
  const open = byHand || !pictured;
  const acts = make('div', { class: 'board-acts' },
      pictured ? make('button', { type: 'button', onclick: () => { byHand = !byHand; leaveBoard(); draw(); } }, open ? CLOTH.asLaid : CLOTH.byHand) : null,
      chosen.own ? make('button', { type: 'button', onclick: () => ask('drop_laying', { row: chosen.at }).catch(() => {}) }, CLOTH.drop) : null);
  if (open) return make('div', {}, acts, make('p', { class: 'soft' }, set(CLOTH.caption(chosen))), board(chosen.at));
  return make('div', {}, make('figure', { class: 'laying-figure' },
      make('img', { src: addresses[chosen.picture], alt: CLOTH.alt(chosen, laid.size) }), make('figcaption', { class: 'soft' }, set(CLOTH.caption(chosen)))), acts);
}

function item(row) {
  const words = [make('span', {}, set(`${row.width}, ${row.fold}`), row.own ? make('span', { class: 'soft' }, ` \u00b7 ${CLOTH.own}`) : null),
    make('span', { class: 'need' }, set(row.fits ? row.length : CLOTH.misfit(row.misfits)))];
  if (!row.fits) return make('li', { class: 'cloth-row misfit' }, ...words);
  return make('li', {}, make('button', {
    type: 'button', class: `cloth-row${row.best ? ' best' : ''}`, 'aria-pressed': row === chosen ? 'true' : 'false', onclick: () => { chosen = row; leaveBoard(); draw(); },
  }, ...words));
}
