// The ledger: whatever is selected, in numbers and words.
import { fill, make, refill, set } from '../dom.js';
import { ask } from '../line.js';
import { get, put, select, watch } from '../state.js';
import { drawing, names, nearestDrawing } from '../table/pieces.js';
import { walks } from '../walk/walk.js';
import { LEDGER } from '../words/ledger.js';
import { dials } from './dials.js';
import { isTyping, saidLines } from './lines.js';
import { sizePlot } from './plot.js';
import { isRenaming, renaming } from './rename.js';
import { nudging } from '../table/nudge.js';

let page = null;
let asked = 0;
let dialsPage = null;
let shownOf = '';

/** Starts to follow what is selected. */
export function startLedger() {
  watch(['selected', 'pieces', 'size', 'measured'], () => { if (page) tell(); });
}

/** Shows the ledger on a page until it is told to leave. */
export function showLedger(holder) {
  page = holder;
  tell();
  return () => { page = null; };
}

async function tell() {
  const thing = get('selected');
  const mine = ++asked;
  const measured = get('measured');
  if (measured) {
    opened.add(labelOf(measured.row));
    dialsPage = null;
    shownOf = '';
    fill(page, make('h2', {}, LEDGER.measured), row(measured.row));
    return;
  }
  if (!thing) {
    put({ lit: [] });
    if (!dialsPage?.isConnected || names().join(' ') !== overviewOf) overview();
    return;
  }
  let answer;
  try {
    answer = await ask('about', { kind: thing.kind, piece: thing.piece ?? '', name: thing.name });
  } catch {
    return;
  }
  const key = `${thing.kind} ${thing.piece} ${thing.name}`;
  // What she is writing here stays: it is told anew once she has left it.
  if (mine !== asked || !page || (key === shownOf && (isTyping() || isRenaming()))) return;
  dialsPage = null;
  if (key !== shownOf) page.parentElement.scrollTop = 0;
  shownOf = key;
  put({ lit: answer.mates ?? [] });
  refill(page, path(thing), make('h2', {}, set(answer.titled ? LEDGER.titled[answer.titled](answer.title) : answer.title)), renaming(thing, tell), nudging(thing),
      ...answer.words.map((each) => make('p', { class: 'soft' }, set(LEDGER.sentence[each.key](...each.of)))), walks(answer.seams),
      saidLines(thing, tell), ...answer.rows.map(row), members(thing), thing.kind === 'seam' ? joined(answer.mates ?? []) : null);
}

/** The way back from a thing to its piece and to all. */
function path(thing) {
  const link = (word, target) => make('button', { type: 'button', class: 'link', onclick: () => select(target, 'ledger') }, word);
  const steps = [link(LEDGER.all, null)];
  if (thing.piece && thing.kind !== 'piece') {
    const shown = nearestDrawing(thing.piece, get('size'));
    steps.push(' \u203a ', link(shown?.structure.title ?? thing.piece, { kind: 'piece', piece: thing.piece, name: thing.piece }));
  }
  return make('p', { class: 'ledger-path' }, ...steps);
}

function labelOf(measure) {
  return LEDGER.label[measure.label](measure.of);
}

/** One measure in the size on the table, and in every size. */
function row(measure) {
  const label = labelOf(measure);
  const size = get('size');
  const sizes = get('sizes');
  const now = measure.values[size];
  const table = make('details', { class: 'ledger-sizes' }, make('summary', {}, LEDGER.everySize),
      make('table', {}, make('tbody', {}, ...sizes.map((name, index) => make('tr',
          { class: index === size ? 'current' : false },
          make('th', { scope: 'row' }, name), make('td', {}, set(measure.values[index] ?? '\u2013')))))));
  table.open = opened.has(label);
  table.addEventListener('toggle', () => (table.open ? opened.add(label) : opened.delete(label)));
  return make('section', { class: 'measure' },
      make('h3', {}, label),
      make('p', { class: 'measure-now' }, now ? set(now) : LEDGER.notHere),
      sizes.length > 1 ? sizePlot(measure.numbers, size, label) : null, table);
}

const opened = new Set();
let overviewOf = '';

/** Nothing selected: the pieces, to choose among. */
function overview() {
  overviewOf = names().join(' ');
  dialsPage = null;
  if (names().length === 0) {
    fill(page, make('h2', {}, LEDGER.pieces), make('p', { class: 'soft' }, LEDGER.none));
    return;
  }
  fill(page, make('h2', {}, LEDGER.pieces), make('ul', { class: 'ledger-list' }, ...names().map((name) => {
    const shown = nearestDrawing(name, get('size'));
    return make('li', {}, make('button', { type: 'button', class: 'row', onclick: () => select({ kind: 'piece', piece: name, name }, 'ledger') },
        make('span', { class: 'number' }, String(shown?.structure.number ?? '')),
        make('span', {}, shown?.structure.title ?? name)));
  })), make('p', { class: 'soft hint' }, LEDGER.hint), seams(), dialsPage ??= dials());
}

/** The edges that a seam joins. */
function joined(edges) {
  return edges.length === 0 ? null : make('section', { class: 'members' }, make('h3', {}, LEDGER.joins), make('ul', {}, ...edges.map((edge) => make('li', {}, make('button', {
    type: 'button', class: 'link', onclick: () => select(edge, 'ledger'),
  }, `${nearestDrawing(edge.piece, get('size'))?.structure.title ?? edge.piece}, ${edge.name.replaceAll('_', ' ')}`)))));
}

/** All seams, to choose among. */
function seams() {
  const all = get('places').filter((each) => each[1] === 'seam').map((each) => each[0]);
  return all.length === 0 ? null : make('details', { class: 'ledger-seams' }, make('summary', {}, LEDGER.seams(all.length)), make('ul', { class: 'members' }, ...all.map((name) => make('li', {}, make('button', {
    type: 'button', class: 'link', onclick: () => select({ kind: 'seam', piece: '', name }, 'ledger'),
  }, name.replaceAll('_', ' '))))));
}

/** What a piece is made of, to choose among without pointing. */
function members(thing) {
  if (thing.kind !== 'piece') return null;
  const shown = drawing(thing.piece, get('size')) ?? nearestDrawing(thing.piece, get('size'));
  if (!shown) return null;
  const group = (kind, title) => {
    const parts = shown.parts(kind);
    return parts.length === 0 ? null : make('section', { class: 'members' }, make('h3', {}, title),
        make('ul', {}, ...parts.map((part) => make('li', {}, make('button', {
          type: 'button', class: 'link', onclick: () => select({ kind, piece: thing.piece, name: part.name }, 'ledger'),
        }, kind === 'notch' ? LEDGER.notch(part) : part.name.replaceAll('_', ' '))))));
  };
  return make('div', {}, group('edge', LEDGER.edges), group('point', LEDGER.points), group('path', LEDGER.lines), group('notch', LEDGER.notches));
}
