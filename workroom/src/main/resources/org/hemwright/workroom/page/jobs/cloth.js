// Cloth: what the size on the table takes on each width and fold, and how it is laid.
import { fill, make, refill, set } from '../dom.js';
import { ask, hear } from '../line.js';
import { get, watch } from '../state.js';
import { CLOTH } from '../words/cloth.js';
import { lead, leads } from './lead.js';
import { board, leaveBoard } from './board.js';
import { look, lookAway } from './watch.js';

export const wide = true;

let page = null;
let sheet = null;
let laid = null;
let progress = null;
let chosen = null;
let wanted = '';
let byHand = false;
let also = 0;
let unit = '';
let looking = false;
let outcome = '';
let refused = '';
const addresses = [];

hear('laying', (head) => { progress = head; if (sheet && head.size === sizeName()) tellProgress(); });
hear('found', (head) => {
  if (!sheet || head.size !== sizeName() || fresh()) return;
  const place = sheet.querySelector('.watching');
  if (place) look(place, `${head.heading} ${head.width} ${head.fold}`, head, CLOTH.caption(head));
});
hear('shorter', (head) => {
  const place = looking && sheet?.querySelector('.watching');
  if (place && chosen?.at === head.row) look(place, 'further', head, CLOTH.caption({ ...chosen, length: head.length, density: head.density }));
});
hear('searched', (head) => {
  if (!looking) return;
  looking = false;
  outcome = head.kept ? CLOTH.shorter(head.less) : head.stopped ? CLOTH.stopped : CLOTH.shortest;
  lookAway();
  if (sheet) draw();
});
hear('laid', (head) => {
  if (head.size !== sizeName()) return;
  laid = head;
  progress = null;
  head.rows.forEach((row, at) => { row.at = at; });
  const same = chosen && head.rows.find((row) => row.heading === chosen.heading && row.width === chosen.width && row.fold === chosen.fold && row.fits);
  chosen = same || (head.rows.find((row) => row.picture !== undefined) ?? null);
  leaveBoard();
  if (!looking) lookAway();
  for (const each of addresses.splice(0)) URL.revokeObjectURL(each);
  for (const svg of head.pictures) addresses.push(URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' })));
  if (sheet) draw();
});

watch(['size', 'revision'], () => { if (sheet) lay(); });

const sizeName = () => get('sizes')[get('size')];

export function show(holder) {
  page = holder.page;
  sheet = holder.sheet;
  outcome = '';
  lay();
  return () => {
    page = null;
    sheet = null;
    if (looking) stop();
    leaveBoard();
    lookAway();
  };
}

/** Asks once the tape stands still for a moment. */
function lay() {
  const key = `${get('revision')} ${get('size')} ${also}`;
  if (looking && laid?.size !== sizeName()) stop();
  draw();
  if (key === wanted) return;
  wanted = key;
  setTimeout(() => {
    if (wanted !== key || !sheet) return;
    refused = '';
    ask('lay', { size: get('size'), also }).catch((reason) => { wanted = ''; refused = reason.message; if (sheet) draw(); });
  }, laid ? 350 : 0);
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
  const state = make('p', { class: 'laying soft', role: 'status' }, fresh() ? outcome : CLOTH.waiting);
  const trouble = refused ? make('p', { class: 'grid-problem fail' }, refused) : null;
  if (!laid || laid.size !== sizeName()) {
    fill(sheet, make('h2', {}, CLOTH.title(sizeName())), state, trouble, make('div', { class: 'watching' }));
    refill(page, make('h2', {}, CLOTH.name), make('p', { class: 'soft' }, CLOTH.hint), another());
    return;
  }
  const findings = laid.findings.map((each) => make('p', { class: `grid-problem ${each.status}` }, set(each.message), ' ', set(each.mend), ' ',
      leads(each) && leads(each) !== 'job' ? make('button', { type: 'button', class: 'link', onclick: () => lead(each) }, CLOTH.show) : null));
  fill(sheet, make('h2', {}, CLOTH.title(laid.size)), state, trouble, ...findings, chosen ? figure() : null);
  const headings = [...new Set(laid.rows.map((row) => row.heading))];
  refill(page, make('h2', {}, CLOTH.name), ...headings.map((heading) => make('section', { class: 'cloth-rows' }, make('h3', {}, heading),
      make('ul', {}, ...laid.rows.filter((row) => row.heading === heading).map(item)))), another(), make('p', { class: 'soft hint' }, CLOTH.hint));
}

/** Another width of cloth than those that the document names. */
function another() {
  if (!unit) unit = laid?.inches ? 'in' : 'cm';
  const field = make('input', { type: 'number', id: 'also-width', min: 0, step: 'any', inputmode: 'decimal', value: also ? Math.round((also / CLOTH.units[unit]) * 10) / 10 : '' });
  const units = make('select', { 'aria-label': CLOTH.unit, id: 'also-unit' }, ...Object.keys(CLOTH.units).map((each) => make('option', { value: each, selected: each === unit }, each)));
  const change = () => { unit = units.value; also = Math.max(0, Number(field.value) || 0) * CLOTH.units[unit]; lay(); };
  field.addEventListener('change', change);
  units.addEventListener('change', change);
  return make('div', { class: 'also-width' }, make('label', { for: 'also-width' }, CLOTH.also), field, units);
}

/** Looks longer for a shorter laying of the chosen row, seen as it is found. */
function search() {
  looking = true;
  outcome = '';
  byHand = false;
  leaveBoard();
  lookAway();
  draw();
  sheet.querySelector('.enough').focus();
  const row = chosen;
  ask('board', { row: row.at }).then((head) => {
    const place = looking && sheet?.querySelector('.watching');
    if (place) look(place, 'further', head, CLOTH.caption(row));
  }, () => {});
  ask('search_on', { row: row.at }).catch((reason) => { looking = false; refused = reason.message; if (sheet) draw(); });
}

function stop() {
  ask('stop_search').catch(() => {});
}

/** The laying that is chosen: as a picture of the booklet, or on the board to be arranged by hand. */
function figure() {
  const caption = make('p', { class: 'soft' }, set(CLOTH.caption(chosen)));
  if (looking) {
    const old = sheet.querySelector('.watching');
    return make('div', {}, make('div', { class: 'board-acts' }, make('button', { type: 'button', class: 'chief enough', onclick: stop }, CLOTH.enough)),
        make('p', { class: 'soft', role: 'status' }, CLOTH.looking), old ?? make('div', { class: 'watching' }));
  }
  const pictured = chosen.picture !== undefined;
  const open = byHand || !pictured;
  const acts = make('div', { class: 'board-acts' },
      make('button', { type: 'button', class: 'further', disabled: !fresh(), onclick: search }, CLOTH.further),
      pictured ? make('button', { type: 'button', class: 'by-hand', onclick: () => { byHand = !byHand; leaveBoard(); draw(); sheet.querySelector('.by-hand').focus(); } }, open ? CLOTH.asLaid : CLOTH.byHand) : null,
      chosen.own ? make('button', { type: 'button', onclick: () => { outcome = ''; ask('drop_laying', { row: chosen.at }).catch(() => {}); } }, CLOTH.drop) : null);
  if (open) return make('div', {}, acts, caption, board(chosen.at));
  return make('div', {}, acts, make('figure', { class: 'laying-figure' },
      make('img', { src: addresses[chosen.picture], alt: CLOTH.alt(chosen, laid.size) }), make('figcaption', { class: 'soft' }, set(CLOTH.caption(chosen)))));
}

function choose(row) {
  if (looking) stop();
  chosen = row;
  outcome = '';
  leaveBoard();
  draw();
}

function item(row) {
  const words = [make('span', {}, set(`${row.width}, ${row.fold}`), row.own ? make('span', { class: 'soft' }, ` \u00b7 ${CLOTH.own}`) : null),
    make('span', { class: 'need' }, set(row.fits ? row.length : CLOTH.misfit(row.misfits)))];
  if (!row.fits) return make('li', { class: 'cloth-row misfit' }, ...words);
  return make('li', {}, make('button', {
    type: 'button', class: `cloth-row${row.best ? ' best' : ''}`, 'data-row': row.at, 'aria-pressed': row === chosen ? 'true' : 'false', onclick: () => choose(row),
  }, ...words));
}
