// Bring in: pieces drawn elsewhere or photographed, and how they grow.
import { fill, make } from '../dom.js';
import { put } from '../state.js';
import { BRING } from '../words/bring.js';
import { showGrade } from '../bring/grade.js';
import { showPhotograph } from '../bring/photograph.js';
import { openSent, showTrace } from '../bring/trace.js';

export const wide = true;

const WAYS = ['drawing', 'photograph', 'grading'];
const SHOWS = { drawing: showTrace, photograph: showPhotograph, grading: showGrade };
let way = 'drawing';
let holder = null;
let leave = null;

export function show({ page, sheet }) {
  holder = {
    page, sheet,
    aside: (...children) => fill(page, ways(), ...children),
    toGrading: (piece, note) => turn('grading', piece, note),
    toDrawing: () => { turn('drawing'); return openSent(); },
  };
  turn(way);
  return () => { leave?.(); leave = null; holder = null; };
}

function ways() {
  return make('div', {}, make('h2', {}, BRING.title), make('div', { class: 'bring-ways', role: 'group', 'aria-label': BRING.ways },
      ...WAYS.map((each) => make('button', { type: 'button', class: 'link', 'aria-pressed': String(each === way), onclick: () => turn(each) }, BRING[each])),
      make('button', { type: 'button', class: 'link', onclick: () => put({ job: 'bodies' }) }, BRING.chart)));
}

function turn(to, piece, note) {
  leave?.();
  way = to;
  fill(holder.sheet);
  leave = SHOWS[to](holder, piece, note);
}
