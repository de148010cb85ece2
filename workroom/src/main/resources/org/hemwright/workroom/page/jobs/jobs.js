// The jobs, in the order of the work. Each is a module of its own, loaded when it is first turned to; it fills the
// ledger and, where it needs more room than that, the sheet in the table's place.
import { fill, make, refill } from '../dom.js';
import { get, put, watch } from '../state.js';
import { JOBS } from '../words/room.js';

/**
 * Where each job lives. A module gives `show({page, sheet})`, which fills them and may give back a function that is
 * called when another job is turned to; `wide: true` has the sheet laid over the table.
 */
const MODULES = {
  bodies: () => import('./bodies.js'),
  bring: () => import('./bring.js'),
  draft: () => import('./draft.js'),
  proof: () => import('./proof.js'),
  cloth: () => import('./cloth.js'),
  paper: () => import('./paper.js'),
  making: () => import('./making.js'),
  release: () => import('./release.js'),
  moments: () => import('./moments.js'),
};

const counts = new Map();
let leave = null;

/** What is turned to from the head of the page, not from the column. */
const ASIDE = ['moments'];

/** Jobs that have something to count before they are turned to. */
const COUNTING = ['proof'];

/** Starts the column of jobs. */
export function startJobs() {
  watch(['job'], turn);
  turn();
  for (const job of COUNTING) MODULES[job]();
}

/** Tells how many things wait in a job; `fails` where some must be mended. */
export function count(job, waiting, fails = false) {
  counts.set(job, { waiting, fails });
  list();
}

function list() {
  refill(document.getElementById('jobs'), ...Object.keys(MODULES).filter((job) => !ASIDE.includes(job)).map((job) => {
    const { waiting = 0, fails = false } = counts.get(job) ?? {};
    return make('li', {}, make('button', {
      type: 'button', 'data-to': job, 'aria-current': get('job') === job ? 'page' : false, onclick: () => put({ job }),
    }, JOBS[job], waiting
      ? make('span', { class: `count${fails ? ' fail' : ''}` }, String(waiting), make('span', { class: 'hidden-words' }, ' waiting'))
      : null));
  }));
}

async function turn() {
  list();
  const job = get('job');
  document.body.dataset.job = job;
  const module = await MODULES[job]();
  if (get('job') !== job) return;
  leave?.();
  const page = document.getElementById('page');
  const sheet = document.getElementById('sheet');
  fill(page);
  fill(sheet);
  sheet.hidden = !module.wide;
  document.getElementById('table').hidden = Boolean(module.wide);
  leave = module.show({ page, sheet }) ?? null;
}
