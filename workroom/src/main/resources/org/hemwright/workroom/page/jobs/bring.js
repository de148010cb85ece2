// Bring in: pieces drawn elsewhere, and how they grow.
import { fill, make } from '../dom.js';
import { put } from '../state.js';
import { BRING } from '../words/bring.js';
import { showGrade } from '../bring/grade.js';
import { showTrace } from '../bring/trace.js';

export const wide = true;

const WAYS = ['drawing', 'grading'];
let way = 'drawing';
let holder = null;
let leave = null;

export function show({ page, sheet }) {
  holder = {
    page, sheet,
    aside: (...children) => fill(page, ways(), ...children),
    toGrading: (piece, note) => turn('grading', piece, note),
  };
  turn(way);
  return () => { leave?.(); leave = null; holder = null; };
}

function ways() {
  return make('div', {}, make('h2', {}, BRING.title), make('ul', { class: 'ledger-list', 'aria-label': BRING.ways },
      ...WAYS.map((each) => make('li', {}, make('button', { type: 'button', class: 'row', 'aria-pressed': String(each === way), onclick: () => turn(each) }, BRING[each]))),
      make('li', {}, make('button', { type: 'button', class: 'row', onclick: () => put({ job: 'bodies' }) }, BRING.chart, make('span', { class: 'soft' }, BRING.toBodies)))));
}

function turn(to, piece, note) {
  leave?.();
  way = to;
  fill(holder.sheet);
  leave = to === 'drawing' ? showTrace(holder) : showGrade(holder, piece, note);
}
