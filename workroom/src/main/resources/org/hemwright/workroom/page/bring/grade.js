// How traced pieces grow: steps for each corner, typed, pasted, or taken from the chart or from another piece.
import { fill, make, set } from '../dom.js';
import { ask } from '../line.js';
import { get, watch } from '../state.js';
import { GRADE } from '../words/bring.js';
import { choice, field, linesShown, troubles, typed } from './fields.js';
import { frame, line, numbered, perPixel, upright } from './picture.js';

let place = null;
let told = null;
let corners = [];
let how = 'rules';
let as = '';
let answer = null;
let note = '';
let wanted = '';
let current = null;
let unit = 'mm';
let writing = false;

watch(['revision'], () => { if (place && !writing) load(); });

/** Fills the sheet; `piece` is the one whose steps are asked for. */
export function showGrade(holder, piece = '', said = '') {
  place = holder;
  note = said;
  if (piece) wanted = piece;
  load();
  return () => { place = null; };
}

async function load() {
  try {
    told = await ask('grading', { piece: wanted });
  } catch {
    return;
  }
  if (!place) return;
  if (!told.corners) {
    fill(place.sheet, make('h2', {}, GRADE.title), make('p', { class: 'soft' }, GRADE.none));
    place.aside();
    return;
  }
  wanted = told.piece;
  corners = told.corners;
  how = 'rules';
  as = '';
  answer = { outlines: told.outlines, at: told.at, lengths: told.lengths, lines: null, problems: [] };
  build();
}

let svg = null;
let rowsAt = null;
let lengthsAt = null;

function build() {
  const title = told.pieces.find((each) => each.name === told.piece)?.title ?? told.piece;
  rowsAt = make('div');
  lengthsAt = make('div', { class: 'grid-scroll', tabindex: 0, role: 'group', 'aria-label': GRADE.lengths });
  svg = frame(boxOf(answer.outlines), GRADE.picture(title));
  fill(place.sheet, make('h2', {}, GRADE.title), make('p', { class: 'bring-hint' }, GRADE.hint),
      note ? make('p', { class: 'bring-note', role: 'status' }, note) : null,
      make('div', { class: 'bring-two' }, make('div', { class: 'bring-look' }, svg), make('div', { class: 'bring-form' },
          told.pieces.length > 1 ? field(GRADE.piece, choice(told.piece, told.pieces.map((each) => [each.name, each.title]), (name) => { wanted = name; note = ''; load(); })) : null,
          told.as ? make('p', { class: 'bring-note' }, GRADE.as(told.as)) : null,
          rowsAt, sources(), paste())),
      make('h3', {}, GRADE.lengths), lengthsAt);
  drawRows();
  paint();
  aside();
}

function drawRows() {
  const cell = (corner, index, way) => {
    const input = typed(corner[way], (text) => { corner[way] = text; how = 'rules'; later(); }, { 'aria-label': way === 'across' ? GRADE.acrossOf(index + 1) : GRADE.upOf(index + 1) });
    input.addEventListener('focus', () => { current = { corner, way, input }; });
    return make('td', {}, input);
  };
  fill(rowsAt, make('table', { class: 'bring-table' }, make('thead', {}, make('tr', {}, make('th', { scope: 'col' }, GRADE.cornerHead), make('th', { scope: 'col' }, GRADE.across), make('th', { scope: 'col' }, GRADE.up))),
      make('tbody', {}, ...corners.map((corner, index) => make('tr', {}, make('th', { scope: 'row' }, GRADE.corner(index + 1, corner.edge.replaceAll('_', ' '), corner.next.replaceAll('_', ' '))),
          cell(corner, index, 'across'), cell(corner, index, 'up'))))),
  told.kept?.length ? make('section', {}, make('h3', {}, GRADE.kept), linesShown(told.kept)) : null);
}

function sources() {
  const shares = choice('', [['', '…'], ...(told.measurements ?? []).map((name) => [name, GRADE.share(name.replaceAll('_', ' '))])], (name) => {
    if (!name) return;
    const at = current ?? { corner: corners[0], way: 'across' };
    at.corner[at.way] = `1/4 of the ${name} step`;
    how = 'rules';
    drawRows();
    tell();
    shares.value = '';
  });
  const others = choice('', [['', '…'], ...(told.others ?? []).map((each) => [each.name, each.traced ? GRADE.traced(each.title) : GRADE.drafted(each.title)])], (name) => take(name));
  return make('div', { class: 'bring-fields' }, field(GRADE.chart, shares, GRADE.shareHint), told.others?.length ? field(GRADE.pieces, others) : null);
}

async function take(name) {
  const other = told.others.find((each) => each.name === name);
  if (!other) return;
  if (other.traced) {
    how = 'as';
    as = name;
    tell();
    return;
  }
  const steps = await ask('taken steps', { piece: told.piece, from: name });
  if (steps.none) {
    answer = { ...answer, problems: [{ status: 'warn', message: GRADE.noSteps(other.title), mend: '' }] };
    aside();
    return;
  }
  put(steps.corners);
}

function put(taken) {
  corners = taken;
  how = 'rules';
  current = null;
  drawRows();
  tell();
}

function paste() {
  const area = make('textarea', { rows: 3, spellcheck: 'false', class: 'bring-paste' });
  const units = choice(unit, Object.entries(GRADE.units), (value) => { unit = value; });
  return make('section', {}, make('h3', {}, GRADE.paste), make('p', { class: 'soft' }, GRADE.pasteHint), field(GRADE.paste, area), make('div', { class: 'bring-row' }, field(GRADE.pasteUnit, units),
      make('button', { type: 'button', onclick: async () => {
        const steps = await ask('taken steps', { piece: told.piece, pasted: area.value, unit });
        if (steps.none) {
          answer = { ...answer, problems: [{ status: 'warn', message: GRADE.pasteBad, mend: '' }] };
          aside();
        } else put(steps.corners);
      } }, GRADE.put)));
}

let timer = 0;
function later() {
  clearTimeout(timer);
  timer = setTimeout(tell, 350);
}

const fields = () => ({ piece: told.piece, how, as, corners: corners.map(({ edge, across, up }) => ({ edge, across, up })) });

let asking = false;
let again = false;
async function tell() {
  clearTimeout(timer);
  if (asking) {
    again = true;
    return;
  }
  asking = true;
  try {
    answer = await ask('try grading', fields());
  } catch (refused) {
    answer = { ...answer, problems: [{ status: 'fail', message: refused.message, mend: '' }] };
  }
  asking = false;
  if (again) {
    again = false;
    tell();
    return;
  }
  if (!place) return;
  paint();
  aside();
}

function boxOf(outlines) {
  const numbers = outlines.flatMap((each) => (each.d.match(/-?[\d.]+/g) ?? []).map(Number));
  if (numbers.length < 4) return [0, 0, 100, 100];
  const axis = (from) => numbers.filter((none, index) => index % 2 === from);
  const [x, y] = [axis(0), axis(1)];
  return [Math.min(...x), Math.min(...y), Math.max(...x), Math.max(...y)];
}

function paint() {
  const box = frame(boxOf(answer.outlines ?? []), '').getAttribute('viewBox');
  svg.setAttribute('viewBox', box);
  const unitNow = perPixel(svg);
  const base = get('sizes')[get('base')];
  fill(svg, upright(...(answer.outlines ?? []).map((each) => line(each.d, each.size === base ? 'found' : 'found other'))), ...(answer.at ?? []).map((at, index) => numbered(at, index + 1, unitNow)));
  const sizes = (answer.outlines ?? []).map((each) => each.size);
  fill(lengthsAt, make('table', { class: 'files' }, make('thead', {}, make('tr', {}, make('td'), ...sizes.map((size) => make('th', { scope: 'col' }, size)))),
      make('tbody', {}, ...(answer.lengths ?? []).map((each) => make('tr', {}, make('th', { scope: 'row' }, each.edge.replaceAll('_', ' ')), ...each.values.map((value) => make('td', { class: 'count' }, set(value))))))));
}

function aside() {
  place.aside(
      answer?.problems?.length ? make('section', { class: 'bring-troubles' }, ...troubles(answer.problems, set)) : null,
      answer?.lines ? make('section', {}, make('h3', {}, GRADE.confirm), answer.lines.length ? linesShown(answer.lines) : make('p', {}, GRADE.same)) : null,
      make('div', { class: 'acts' },
          make('button', { type: 'button', class: 'chief', disabled: !answer?.lines, onclick: write }, GRADE.write),
          make('button', { type: 'button', onclick: () => { how = 'none'; tell(); } }, GRADE.same)));
}

async function write() {
  await tell();
  writing = true;
  try {
    await ask('write grading', fields());
    note = GRADE.written;
  } catch (refused) {
    note = refused.message;
  }
  writing = false;
  if (place) load();
}
