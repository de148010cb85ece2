// Her own chart: what each heading is taken for, what is missing and how it may be estimated; taken when she confirms it.
import { fill, make, set } from '../dom.js';
import { ask } from '../line.js';
import { CHART, PARCEL } from '../words/bring.js';
import { choice, field, linesShown, troubles } from './fields.js';
import { fileField } from './parcel.js';

let place = null;
let text = null;
let said = null;
let told = null;

/** Fills the sheet and the page; `done` is called with a note when she is through. */
export function showChart(holder) {
  place = holder;
  start();
  return () => { place = null; };
}

const fresh = () => ({ matches: {}, unit: '', whom: '', base: '' });

function start() {
  told = null;
  said = fresh();
  const area = make('textarea', { rows: 6, spellcheck: 'false', class: 'bring-paste' });
  const taken = () => { if (area.value.trim()) { text = area.value; tell(); } };
  area.addEventListener('paste', () => setTimeout(taken));
  area.addEventListener('change', taken);
  fill(place.sheet, make('h2', {}, CHART.title), make('p', { class: 'bring-hint' }, CHART.hint),
      fileField({ label: PARCEL.choose, accept: '.xlsx,.csv,.tsv,.txt', take: () => { text = null; return tell(); } }),
      field(CHART.paste, area));
  aside();
}

async function tell() {
  const active = document.activeElement?.dataset?.match;
  try {
    told = await ask('brought chart', { ...said, ...(text === null ? {} : { text }) });
  } catch (refused) {
    told = { problems: [{ status: 'fail', message: refused.message, mend: '' }] };
  }
  if (!place) return;
  if (!told.columns) {
    const problems = told.problems;
    start();
    place.sheet.append(...troubles(problems, set));
    return;
  }
  build();
  if (active) place.sheet.querySelector(`[data-match="${CSS.escape(active)}"]`)?.focus();
}

const plain = (name) => name.replaceAll('_', ' ');

function build() {
  const allUnits = told.withoutUnit.length || said.unit;
  fill(place.sheet, make('h2', {}, CHART.match), make('p', { class: 'bring-hint' }, CHART.matchHint(told.sizes.length)),
      make('div', { class: 'grid-scroll', tabindex: 0, role: 'group', 'aria-label': CHART.match }, make('table', { class: 'bring-table bring-columns' },
          make('thead', {}, make('tr', {}, ...[CHART.heading, CHART.means, CHART.standard, CHART.unit, CHART.values].map((each) => make('th', { scope: 'col' }, each)))),
          make('tbody', {}, ...told.columns.map(row)))),
      make('div', { class: 'bring-fields' },
          allUnits ? field(CHART.allUnits, choice(said.unit, [['', CHART.noUnit], ...Object.entries(CHART.units)], (unit) => { said.unit = unit; tell(); }, { 'data-match': '*unit' })) : null,
          field(CHART.base, choice(told.base, told.sizes.map((size) => [size, size]), (size) => { said.base = size; tell(); }, { 'data-match': '*base' }))),
      make('section', { class: 'bring-part' }, make('h3', {}, CHART.missing), ...missing()),
      ...listed(CHART.ranges, told.ranges), ...listed(CHART.unread, told.unread), ...listed(CHART.leftOut, told.leftOut),
      told.csv ? make('section', { class: 'bring-part' }, make('h3', {}, CHART.preview), linesShown(told.csv.trimEnd().split('\n'))) : null);
  aside();
}

function row(column) {
  const options = [['', CHART.leaveOut], ...told.names.map((each) => [each.name, plain(each.name)])];
  if (column.name && !told.names.some((each) => each.name === column.name)) options.push([column.name, CHART.own(plain(column.name))]);
  const pick = choice(column.name, options, (name) => { said.matches[column.heading] = name; tell(); }, { 'data-match': column.heading, 'aria-label': CHART.meansOf(column.heading) });
  const values = column.values.filter((each) => each !== null);
  return make('tr', { class: column.name ? '' : 'out' }, make('th', { scope: 'row' }, column.heading),
      make('td', {}, pick, column.proposed && column.name ? make('span', { class: 'bring-proposed' }, CHART.proposed) : null),
      make('td', { class: 'soft' }, column.name ? column.standard ?? '' : ''), make('td', {}, column.unit ?? ''),
      make('td', { class: 'soft' }, values.length ? `${values[0]} … ${values[values.length - 1]}` : ''));
}

function missing() {
  if (!told.missing.length && !told.estimates.length && !said.whom) return [make('p', { class: 'soft' }, CHART.nothingMissing)];
  const ends = (values) => { const known = values.filter((each) => each !== null).map((each) => Math.round(each * 10) / 10); return known.length > 1 ? `${known[0]} … ${known[known.length - 1]}` : String(known[0] ?? ''); };
  return [
    field(CHART.whom, choice(said.whom, Object.entries(CHART.whoms), (whom) => { said.whom = whom; tell(); }, { 'data-match': '*whom' }), CHART.whomHint),
    make('ul', { class: 'bring-list' }, ...told.estimates.map((each) => make('li', {}, (each.run ? CHART.byRun : CHART.estimate)(plain(each.name), ends(each.values), each.from.map(plain).join(', '), each.run || each.spread))),
        ...told.missing.map((name) => make('li', { class: 'warn' }, CHART.absent(plain(name))))),
  ];
}

function listed(title, entries) {
  return entries.length ? [make('section', { class: 'bring-part' }, make('h3', {}, title), make('ul', { class: 'bring-list' }, ...entries.map((each) => make('li', {}, each))))] : [];
}

function aside() {
  const words = [];
  if (told?.withoutUnit?.length) words.push(CHART.withoutUnit(told.withoutUnit.join(', ')));
  if (told?.twice?.length) words.push(CHART.twice(told.twice.map(plain).join(', ')));
  fill(place.page, make('h2', {}, CHART.title),
      ...words.map((each) => make('p', { class: 'grid-problem fail' }, each)),
      told?.csv ? make('section', { class: 'bring-troubles' }, make('h3', {}, CHART.problems), ...(told.problems.length ? troubles(told.problems, set) : [make('p', {}, CHART.well)])) : null,
      make('div', { class: 'acts' }, told?.columns ? make('button', { type: 'button', class: 'chief', disabled: !told.csv, onclick: write }, CHART.write) : null,
          told?.columns ? make('button', { type: 'button', onclick: start }, CHART.again) : null,
          make('button', { type: 'button', onclick: () => place.done('') }, CHART.back)));
}

async function write() {
  try {
    await ask('write chart', { ...said, ...(text === null ? {} : { text }) });
    place.done(CHART.written);
  } catch (refused) {
    fill(place.page, make('h2', {}, CHART.title), make('p', { class: 'grid-problem fail' }, refused.message));
  }
}
