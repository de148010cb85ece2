// A piece drawn elsewhere: she says what each line of the drawing is, sees the piece that comes of it, and confirms.
import { fill, make, set } from '../dom.js';
import { ask } from '../line.js';
import { get, put } from '../state.js';
import { TRACE } from '../words/bring.js';
import { choice, field, linesShown, tick, troubles, typed } from './fields.js';
import { fileField } from './parcel.js';
import { PARCEL } from '../words/bring.js';
import { dot, frame, line, named, numbered, perPixel, upright } from './picture.js';

let drawing = null;
let said = null;
let answer = null;
let note = '';
let lit = '';
let place = null;

/** Fills the sheet and the page beside it; `toGrading` leads to the steps of a piece. */
export function showTrace(holder) {
  place = holder;
  if (drawing) build();
  else start();
  return () => { place = null; };
}

function start() {
  fill(place.sheet, make('h2', {}, TRACE.title), make('p', { class: 'bring-hint' }, TRACE.hint),
      note ? make('p', { class: 'bring-note', role: 'status' }, note) : null,
      fileField({ label: PARCEL.choose, accept: '.svg,.dxf,image/svg+xml', take: openSent }));
  aside();
}

/** Opens what was sent or made as the drawing. */
export async function openSent() {
  const head = await ask('drawing');
  note = '';
  if (!head.parts) {
    drawing = null;
    start();
    place.sheet.append(...troubles(head.problems, set));
    return;
  }
  drawing = head;
  answer = null;
  const roles = new Map(head.parts.map((part) => [part.name, part.proposed]));
  said = {
    roles, touched: new Set(), scale: '10 cm', start: 'top left', clockwise: true, corners: '12', less: '1 cm', edges: [],
    piece: { name: head.name, title: head.title, number: head.number, count: 1, fabric: head.fabrics[0]?.name ?? 'main', mirrored: false, fold: '', allowance: '1 cm', size: '', instead: '' },
    grown: true,
  };
  build();
  tell();
}

// --- the form -----------------------------------------------------------------------------------

let svg = null;
let overlay = null;
let edgesAt = null;
let scaleAt = null;
let outlineAt = null;
let partsAt = null;
let pieceAt = null;

function build() {
  svg = frame(drawing.box.length ? drawing.box : [0, 0, 100, 100], TRACE.picture(0));
  svg.append(upright(...drawing.lines.map((each, index) => line(each.d, `drawn line-${index}`)),
      ...drawing.lines.map((each, index) => {
        const hit = line(each.d, 'hit');
        hit.addEventListener('click', () => clicked(index));
        return hit;
      })));
  overlay = make('div');
  partsAt = make('div', { class: 'bring-parts' });
  scaleAt = make('div');
  outlineAt = make('div');
  edgesAt = make('div');
  pieceAt = make('div');
  fill(place.sheet, make('h2', {}, TRACE.file(drawing.file.replace(/^traced\//, ''))),
      make('p', { class: 'soft' }, `${drawing.trueSize ? TRACE.trueSize : TRACE.noSize} ${TRACE.stored(drawing.file)}`),
      make('div', { class: 'bring-two' },
          make('div', { class: 'bring-look' }, svg, drawing.more ? make('p', { class: 'soft' }, TRACE.more(drawing.more)) : null,
              ...troubles(drawing.problems, set),
              drawing.unread.length ? make('section', { class: 'bring-unread' }, make('h3', {}, TRACE.unread), make('ul', {}, ...drawing.unread.map((each) => make('li', {}, each)))) : null),
          make('div', { class: 'bring-form' }, make('section', {}, make('h3', {}, TRACE.parts), make('p', { class: 'soft' }, TRACE.partsHint), partsAt, scaleAt),
              outlineAt, edgesAt, pieceAt)));
  drawParts();
  drawScale();
  drawOutline();
  drawEdges();
  drawPiece();
  paint();
  aside();
}

function drawParts() {
  const options = Object.entries(TRACE.roles);
  fill(partsAt, make('table', { class: 'bring-table' },
      make('thead', {}, make('tr', {}, make('th', { scope: 'col' }, TRACE.part), make('th', { scope: 'col' }, TRACE.is))),
      make('tbody', {}, ...drawing.parts.map((part) => {
        const proposed = !said.touched.has(part.name) && said.roles.get(part.name) !== 'left out';
        const pick = choice(said.roles.get(part.name), options, (role) => {
          said.roles.set(part.name, role);
          said.touched.add(part.name);
          drawParts();
          drawScale();
          drawOutline();
          partsAt.querySelector(`[data-part="${CSS.escape(part.name)}"]`)?.focus();
          tell();
        }, { 'data-part': part.name, 'aria-label': `${part.name} ${TRACE.is}` });
        pick.addEventListener('focus', () => { lit = part.name; paint(); });
        return make('tr', { class: lit === part.name ? 'lit' : '' }, make('th', { scope: 'row' }, part.name, make('span', { class: 'soft' }, ` ${TRACE.lines(part.lines.length)}${part.round ? `, ${TRACE.round}` : ''}`)),
            make('td', {}, pick, proposed ? make('span', { class: 'bring-proposed' }, TRACE.proposed) : null));
      }))));
}

/** A click on the drawing leads to the smallest part that has the line; one that has only a layer's name gets a row of its own. */
function clicked(index) {
  const named = drawing.lines[index].name;
  let part = drawing.parts.filter((each) => each.lines.includes(index)).sort((a, b) => a.lines.length - b.lines.length)[0];
  if (named && (!part || part.lines.length > 1) && lit === (part?.name ?? '')) {
    part = { name: named, lines: [index], round: /Z$/.test(drawing.lines[index].d), proposed: 'left out' };
    drawing.parts.push(part);
    said.roles.set(named, 'left out');
  }
  if (!part) return;
  lit = part.name;
  drawParts();
  const pick = partsAt.querySelector(`[data-part="${CSS.escape(part.name)}"]`);
  pick?.focus();
  pick?.scrollIntoView({ block: 'nearest' });
  paint();
}

const has = (role) => [...said.roles.values()].includes(role);
const withAllowance = () => has('cut line') && !has('stitch line');

function drawScale() {
  fill(scaleAt, has('scale line') ? field(TRACE.scale, typed(said.scale, (text) => { said.scale = text; later(); })) : null);
}

function drawOutline() {
  if (!has('stitch line') && !has('cut line')) {
    fill(outlineAt, make('p', { class: 'bring-note' }, TRACE.choose));
    return;
  }
  const dots = (answer?.ends ?? []).filter((end) => end.dot).map((end) => [end.dot, TRACE.atDot(end.dot)]);
  fill(outlineAt, make('section', {}, make('h3', {}, TRACE.outline), make('div', { class: 'bring-fields' },
      field(TRACE.start, choice(said.start, [...Object.entries(TRACE.starts), ...dots], (value) => { said.start = value; tell(); })),
      field(TRACE.sense, choice(said.clockwise ? 'clockwise' : 'anticlockwise', Object.entries(TRACE.senses), (value) => { said.clockwise = value === 'clockwise'; tell(); })),
      field(TRACE.corners, typed(said.corners, (text) => { said.corners = text; later(); }, { inputmode: 'decimal' })),
      withAllowance() ? field(TRACE.less, typed(said.less, (text) => { said.less = text; later(); })) : null)));
}

function instead() {
  return drawing.pieces.find((each) => each.name === said.piece.instead);
}

function drawEdges() {
  const count = answer?.ends?.length ?? 0;
  if (!count) {
    fill(edgesAt);
    return;
  }
  const cut = withAllowance();
  const names = instead()?.edges ?? [];
  const rows = Array.from({ length: count }, (none, i) => {
    said.edges[i] ??= { name: '', less: '', leftOut: false };
    const edge = said.edges[i];
    const from = i + 1;
    const to = ((i + 1) % count) + 1;
    const out = make('input', { type: 'checkbox', 'aria-label': TRACE.leftOutOf(from, to), onchange: () => { edge.leftOut = out.checked; tell(); } });
    out.checked = edge.leftOut;
    return make('tr', {}, make('th', { scope: 'row' }, TRACE.from(from, to)),
        make('td', {}, typed(edge.name, (text) => { edge.name = text; later(); }, { 'aria-label': TRACE.edgeName(from, to), placeholder: `edge_${from}`, list: 'brought-edges' })),
        cut ? make('td', {}, typed(edge.less, (text) => { edge.less = text; later(); }, { 'aria-label': TRACE.edgeLess(from, to), class: 'short' })) : null,
        cut ? make('td', {}, out) : null);
  });
  fill(edgesAt, make('section', {}, make('h3', {}, TRACE.edges), make('p', { class: 'soft' }, TRACE.edgeHint),
      make('datalist', { id: 'brought-edges' }, ...names.map((name) => make('option', { value: name }))),
      make('table', { class: 'bring-table' }, make('thead', {}, make('tr', {}, make('th', { scope: 'col' }, TRACE.edge), make('th', { scope: 'col' }, TRACE.name),
          cut ? make('th', { scope: 'col' }, TRACE.edgeLessHead) : null, cut ? make('th', { scope: 'col' }, TRACE.leftOut) : null)), make('tbody', {}, ...rows))));
}

function drawPiece() {
  const piece = said.piece;
  const own = !piece.instead;
  const sizes = get('sizes');
  const base = sizes[get('base')] ?? '';
  const edges = (answer?.names ?? []).filter((name) => name);
  fill(pieceAt, make('section', {}, make('h3', {}, TRACE.piece), make('div', { class: 'bring-fields' },
      field(TRACE.instead, choice(piece.instead, [['', TRACE.none], ...drawing.pieces.map((each) => [each.name, each.title])], (name) => {
        piece.instead = name;
        const other = instead();
        if (other) Object.assign(piece, { name: other.name, title: other.title });
        drawEdges();
        drawPiece();
        tell();
      }), piece.instead ? TRACE.insteadHint : ''),
      field(TRACE.called, typed(piece.title, (text) => { piece.title = text; later(); })),
      own ? field(TRACE.name, typed(piece.name, (text) => { piece.name = text; later(); })) : null,
      own ? field(TRACE.number, typed(String(piece.number), (text) => { piece.number = Number(text) || 0; later(); }, { inputmode: 'numeric', class: 'short' })) : null,
      own ? field(TRACE.count, typed(String(piece.count), (text) => { piece.count = Number(text) || 0; later(); }, { inputmode: 'numeric', class: 'short' })) : null,
      own ? field(TRACE.of, choice(piece.fabric, drawing.fabrics.map((each) => [each.name, each.title || each.name]), (name) => { piece.fabric = name; tell(); })) : null,
      own ? field(TRACE.fold, choice(piece.fold, [['', TRACE.noFold], ...edges.map((name) => [name, name.replaceAll('_', ' ')])], (name) => { piece.fold = name; tell(); })) : null,
      own ? field(TRACE.allowance, typed(piece.allowance, (text) => { piece.allowance = text; later(); })) : null,
      field(TRACE.size, choice(piece.size || base, sizes.map((size) => [size, size]), (size) => { piece.size = size === base ? '' : size; tell(); }))),
      own ? tick(TRACE.pair, piece.mirrored, (on) => { piece.mirrored = on; tell(); }) : tick(TRACE.grown, said.grown, (on) => { said.grown = on; tell(); })));
}

// --- what comes of it ---------------------------------------------------------------------------

let timer = 0;
function later() {
  clearTimeout(timer);
  timer = setTimeout(tell, 350);
}

function fields() {
  const number = { ...said.piece };
  return {
    roles: Object.fromEntries(said.roles), scale: has('scale line') ? said.scale : '', start: said.start, clockwise: said.clockwise, corners: Number(said.corners) || 12,
    less: said.less, edges: said.edges, piece: number, grown: Boolean(said.piece.instead) && said.grown,
  };
}

let asking = false;
let again = false;
async function tell() {
  clearTimeout(timer);
  if (!drawing) return;
  if (asking) {
    again = true;
    return;
  }
  asking = true;
  const before = answer;
  try {
    answer = await ask('trace', fields());
  } catch (refused) {
    answer = { problems: [{ status: 'fail', message: refused.message, mend: '' }] };
  }
  asking = false;
  if (again) {
    again = false;
    tell();
    return;
  }
  if (!place) return;
  const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);
  if ((before?.ends?.length ?? 0) !== (answer.ends?.length ?? 0) || edgesAt.querySelectorAll('thead th').length !== (withAllowance() ? 4 : 2)) drawEdges();
  if (!same(before?.names, answer.names) && !pieceAt.contains(document.activeElement)) drawPiece();
  if (!same(before?.ends?.map((end) => end.dot), answer.ends?.map((end) => end.dot)) && !outlineAt.contains(document.activeElement)) drawOutline();
  paint();
  aside();
}

/** The drawing in thin lines, the lit part stronger, the recognised piece over it. */
function paint() {
  if (!svg) return;
  const unit = perPixel(svg);
  const part = drawing.parts.find((each) => each.name === lit);
  drawing.lines.forEach((each, index) => {
    svg.querySelector(`.line-${index}`).classList.toggle('lit', Boolean(part?.lines.includes(index)));
  });
  for (const old of svg.querySelectorAll('.over')) old.remove();
  const over = upright();
  over.classList.add('over');
  const words = upright();
  words.removeAttribute('transform');
  words.classList.add('over');
  const drawn = answer?.drawn;
  if (drawn) {
    if (drawn.cut) over.append(line(drawn.cut, 'found cut'));
    for (const edge of drawn.edges) over.append(line(edge.d, 'found'));
    if (drawn.grain) over.append(line(drawn.grain, 'found grain'));
    for (const mark of drawn.marks) {
      if (mark.d) over.append(line(mark.d, 'found inner'));
      else words.append(dot(mark, 'found-dot', unit));
    }
    for (const notch of drawn.notches) words.append(dot(notch, 'found-dot notch', unit));
    for (const edge of drawn.edges) words.append(named(edge, edge.name.replaceAll('_', ' '), unit));
  }
  (answer?.ends ?? []).forEach((end, index) => words.append(numbered(end, index + 1, unit)));
  svg.append(over, words);
  svg.setAttribute('aria-label', TRACE.picture(answer?.ends?.length ?? 0));
}

function aside() {
  if (!drawing) {
    place.aside();
    return;
  }
  const ready = Boolean(answer?.drawn);
  place.aside(
      answer?.problems?.length ? make('section', { class: 'bring-troubles' }, make('h3', {}, TRACE.problems), ...troubles(answer.problems, set)) : null,
      answer?.lines ? make('section', {}, make('h3', {}, TRACE.confirm), linesShown(answer.lines)) : null,
      answer?.dropped?.length ? make('section', {}, make('h3', {}, TRACE.dropped), linesShown(answer.dropped)) : null,
      make('div', { class: 'acts' },
          make('button', { type: 'button', class: 'chief', disabled: !ready, onclick: write }, TRACE.write),
          make('button', { type: 'button', onclick: () => { drawing = null; answer = null; note = ''; start(); } }, TRACE.another)));
}

async function write() {
  await tell();
  const title = said.piece.title;
  const name = said.piece.name;
  try {
    const done = await ask('write tracing', fields());
    if (done.unwritable) {
      answer = { ...answer, problems: [{ status: 'fail', message: TRACE.unwritable(done.unwritable), mend: '' }] };
      aside();
      return;
    }
  } catch (refused) {
    answer = { ...answer, problems: [{ status: 'fail', message: refused.message, mend: '' }] };
    aside();
    return;
  }
  drawing = null;
  answer = null;
  note = TRACE.written(title);
  if (place) place.toGrading(name, note);
  put({ selected: { kind: 'piece', piece: name, name, by: 'bring' } });
}
