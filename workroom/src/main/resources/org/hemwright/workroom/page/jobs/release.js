// Release: publishes, with its progress; what stands in the way is told with the way to it.
import { fill, make, set } from '../dom.js';
import { ask, hear } from '../line.js';
import { get, put, watch } from '../state.js';
import { askAfter } from '../written.js';
import { lead, leads } from './lead.js';
import { RELEASE } from '../words/release.js';

export const wide = true;

let page = null;
let sheet = null;
let progress = null;
let result = null;
let refused = '';
let begun = 0;
let past = [];

hear('publishing', (head) => { progress = head; note(); if (sheet) tellProgress(); });
hear('published', (head) => { progress = null; result = head; if (sheet) draw(); });
watch(['findings', 'problems', 'revision'], () => { if (sheet && !progress) draw(); });

export function show(holder) {
  page = holder.page;
  sheet = holder.sheet;
  draw();
  return () => { page = null; sheet = null; };
}

function publish(options) {
  result = null;
  refused = '';
  progress = { doing: '', done: 0, of: 1 };
  begun = performance.now();
  past = [];
  draw();
  askAfter('publish', options).catch((reason) => { progress = null; refused = reason.message; draw(); });
}

function tellProgress() {
  const place = sheet.querySelector('.publishing');
  if (!place) {
    draw();
    return;
  }
  fill(place, make('progress', { value: progress.done, max: Math.max(1, progress.of), 'aria-label': RELEASE.publishing }),
      make('span', {}, ` ${RELEASE.doing(progress.doing)} `), make('span', { class: 'soft' }, RELEASE.left(left())));
}

/** How the work went on lately: a share of it at a time. */
function note() {
  if (!begun) begun = performance.now();
  past.push([performance.now(), progress.done / Math.max(1, progress.of)]);
  while (past.length > 12) past.shift();
}

/** About how many seconds are left, by the whole pace and the pace of late; nothing before it can be told. */
function left() {
  const done = progress.done / Math.max(1, progress.of);
  const now = performance.now();
  if (done < 0.04 || done >= 1) return null;
  const whole = ((now - begun) / done) * (1 - done);
  const [time, share] = past[0];
  const late = done > share ? ((now - time) / (done - share)) * (1 - done) : whole;
  return (whole + late) / 2000;
}

function draw() {
  const slips = get('problems').filter((each) => each.status === 'fail').length;
  const fails = get('findings').filter((each) => each.status === 'fail').length;
  const busy = progress !== null;
  const frozen = make('input', { type: 'checkbox', id: 'freeze' });
  fill(sheet, make('h2', {}, RELEASE.title(get('title'))),
      slips ? make('p', { class: 'grid-problem fail' }, RELEASE.slips(slips)) : null,
      fails ? make('p', { class: 'grid-problem fail' }, RELEASE.fails(fails), ' ', make('button', { type: 'button', class: 'link', onclick: () => put({ job: 'proof' }) }, RELEASE.toProof)) : null,
      slips || fails ? make('ul', { class: 'in-the-way' }, ...[...get('problems'), ...get('findings')].filter((each) => each.status === 'fail').slice(0, 12).map(item)) : null,
      refused ? make('p', { class: 'grid-problem fail' }, refused) : null,
      make('div', { class: 'release-acts' },
          make('button', { type: 'button', class: 'chief', disabled: busy || slips > 0 || fails > 0, onclick: () => publish({ proof: false, release: frozen.checked }) }, RELEASE.publish),
          make('label', { class: 'toggle', for: 'freeze' }, frozen, RELEASE.freeze),
          make('button', { type: 'button', disabled: busy || slips > 0, onclick: () => publish({ proof: true }) }, RELEASE.proof)),
      make('p', { class: 'publishing', role: 'status' }, busy ? RELEASE.starting : ''),
      result ? outcome() : null);
  if (busy && progress.doing) tellProgress();
  drawPage();
}

/** A finding with the way to what it is about. */
function item(each) {
  return make('li', { class: `grid-problem ${each.status}` }, set(each.message), ' ', set(each.mend ?? ''), ' ',
      leads(each) ? make('button', { type: 'button', class: 'link', onclick: () => lead(each) }, RELEASE.way(each, leads(each))) : null);
}

function outcome() {
  if (result.trouble) return make('p', { class: 'grid-problem fail' }, result.trouble);
  const findings = result.findings.map(item);
  if (!result.folder) return make('div', {}, make('h3', {}, RELEASE.refused), make('ul', {}, ...findings));
  return make('div', { class: 'outcome' },
      make('p', {}, make('b', {}, result.proof ? RELEASE.proofMade : RELEASE.published), ` ${result.folder}`),
      result.zip ? make('p', {}, RELEASE.zip(result.zip)) : null, result.release ? make('p', {}, RELEASE.released(result.release)) : null,
      make('table', { class: 'files' }, make('thead', {}, make('tr', {}, ...RELEASE.columns.map((each) => make('th', { scope: 'col' }, each)))),
          make('tbody', {}, ...result.files.map((file) => make('tr', {}, make('td', {}, file.name), make('td', {}, file.paper), make('td', { class: 'count' }, String(file.pages || '')))))),
      findings.length ? make('h3', {}, RELEASE.worth) : null, make('ul', {}, ...findings));
}

async function drawPage() {
  let shelf;
  try {
    shelf = await ask('shelf');
  } catch {
    return;
  }
  if (!page) return;
  fill(page, make('h2', {}, RELEASE.shelf), make('p', { class: 'soft' }, shelf.released.length ? RELEASE.has : RELEASE.none),
      make('ul', {}, ...shelf.released.map((each) => make('li', {}, each))), make('p', { class: 'soft hint' }, RELEASE.version(shelf.version ?? '')));
}
