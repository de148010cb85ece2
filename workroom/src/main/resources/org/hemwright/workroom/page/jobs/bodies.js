// Bodies: the size chart as a grid, to be written in and pasted into like a spreadsheet.
import { fill, make, refill, set } from '../dom.js';
import { ask } from '../line.js';
import { get, watch } from '../state.js';
import { BODIES } from '../words/bodies.js';
import { columnPlot } from '../ledger/plot.js';
import { showChart } from '../bring/chart.js';
import { CHART } from '../words/bring.js';

export const wide = true;

let page = null;
let sheet = null;
let chart = null;
let column = 1;
let steps = false;
let note = '';
let bringing = null;

watch(['revision'], () => { if (sheet && !bringing) tell(); });

export function show(holder) {
  page = holder.page;
  sheet = holder.sheet;
  tell();
  return () => { bringing?.(); bringing = null; note = ''; page = null; sheet = null; };
}

async function tell() {
  try {
    chart = await ask('chart');
  } catch {
    return;
  }
  if (!sheet || bringing) return;
  drawSheet();
  drawPage();
}

function drawSheet() {
  if (chart.rows.length === 0) {
    fill(sheet, make('h2', {}, BODIES.title), make('p', { class: 'soft' }, BODIES.none), bringIn());
    return;
  }
  const wideRow = Math.max(...chart.rows.map((row) => row.length));
  const rows = chart.rows.map((row, r) => make('tr', {}, ...Array.from({ length: wideRow }, (none, c) => cell(row[c] ?? '', r, c))));
  const base = get('sizes')[get('base')];
  const problems = get('problems').filter((each) => each.file === chart.file);
  const toggle = make('input', { type: 'checkbox', onchange: () => { steps = toggle.checked; drawSheet(); } });
  toggle.checked = steps;
  refill(sheet, make('h2', {}, BODIES.title), make('p', { class: 'soft' }, BODIES.hint(chart.file, base)), bringIn(), note ? make('p', { class: 'bring-note', role: 'status' }, note) : null,
      make('label', { class: 'toggle' }, toggle, BODIES.steps),
      ...problems.map((each) => make('p', { class: `grid-problem ${each.status}` }, `${BODIES.line(each.line)} `, set(each.message), ' ', set(each.mend))),
      make('div', { class: 'grid-scroll', tabindex: 0, role: 'group', 'aria-label': BODIES.title },
          make('table', { class: 'grid' }, make('thead', {}, rows[0]), make('tbody', {}, ...rows.slice(1)))));
}

/** The way to her own chart, and back. */
function bringIn() {
  return make('p', { class: 'bring-open' }, make('button', { type: 'button', onclick: () => {
    note = '';
    bringing = showChart({ page, sheet, done: (said) => { bringing?.(); bringing = null; note = said; tell(); } });
  } }, CHART.open));
}

function cell(value, r, c) {
  const tag = r === 0 || c === 0 ? 'th' : 'td';
  const before = r > 1 ? chart.rows[r - 1][c] : undefined;
  const step = steps && r > 1 && c > 0 && isNumber(value) && isNumber(before) ? round(value - before) : null;
  const size = chart.rows[r][0];
  const input = make('input', {
    value, 'data-cell': `${r} ${c}`, 'aria-label': r === 0 ? BODIES.heading(c) : c === 0 ? BODIES.sizeName(r) : `${chart.rows[0][c] ?? ''}, ${size}`,
    size: r === 0 ? Math.max(5, value.length) : 5,
  });
  input.addEventListener('focus', () => { column = c || 1; mark(); drawPage(); });
  input.addEventListener('change', () => change(r, c, [[input.value]]));
  input.addEventListener('keydown', (event) => move(event, r, c, input));
  input.addEventListener('paste', (event) => paste(event, r, c));
  const own = { class: `${c === column ? 'chosen' : ''}${c === 0 && get('sizes')[get('size')] === value ? ' now' : ''}` };
  if (tag === 'th') own.scope = r === 0 ? 'col' : 'row';
  return make(tag, own, input, step === null ? null : make('span', { class: 'step' }, step > 0 ? `+${step}` : String(step).replace('-', '\u2212')));
}

/** Marks the column that is written in. */
function mark() {
  for (const each of sheet.querySelectorAll('[data-cell]')) {
    each.parentElement.classList.toggle('chosen', Number(each.dataset.cell.split(' ')[1]) === column);
  }
}

const isNumber = (text) => text !== undefined && text !== '' && Number.isFinite(Number(text));
const round = (value) => Math.round(value * 1000) / 1000;

function change(row, at, block) {
  ask('cells', { row, column: at, block, revision: chart.revision }).then((answer) => { if (!answer.changed) tell(); }, tell);
}

/** A block from a spreadsheet: tabs and lines; one value alone is pasted as usual. */
function paste(event, r, c) {
  const text = event.clipboardData.getData('text/plain').replace(/\r\n?/g, '\n').replace(/\n+$/, '');
  if (!/[\t\n]/.test(text)) return;
  event.preventDefault();
  change(r, c, text.split('\n').map((line) => line.split('\t')));
}

function move(event, r, c, input) {
  const to = { ArrowUp: [r - 1, c], ArrowDown: [r + 1, c], Enter: [r + 1, c] }[event.key];
  if (!to) return;
  const next = sheet.querySelector(`[data-cell="${to[0]} ${to[1]}"]`);
  if (!next) return;
  event.preventDefault();
  if (event.key === 'Enter') input.dispatchEvent(new Event('change'));
  next.focus();
  next.select();
}

function drawPage() {
  if (!page || !chart) return;
  const heading = chart.rows[0]?.[column] ?? '';
  const values = chart.rows.slice(1).map((row) => (isNumber(row[column]) ? Number(row[column]) : null));
  fill(page, make('h2', {}, heading), values.some((each) => each !== null) ? columnPlot(values, chart.rows.slice(1).map((row) => row[0]), heading) : null,
      ...chart.serves.map((each) => make('p', { class: 'serves' }, each)));
}
