// Moments: named places in the history, each laid on what is now.
import { fill, make, refill, set } from '../dom.js';
import { ask, hear } from '../line.js';
import { get, watch } from '../state.js';
import { askAfter } from '../written.js';
import { MOMENTS } from '../words/moments.js';

export const wide = true;

let page = null;
let sheet = null;
let moments = [];
let chosen = null;
let told = null;
let note = '';
let typed = '';
const addresses = [];

hear('since', (head) => {
  if (head.number !== chosen) return;
  told = head;
  for (const each of addresses.splice(0)) URL.revokeObjectURL(each);
  if (sheet) draw();
});
watch(['revision'], () => { if (page) tell(); });
watch(['size'], () => { if (page && chosen !== null) compare(); });

export function show(holder) {
  page = holder.page;
  sheet = holder.sheet;
  told = null;
  note = '';
  draw();
  tell();
  return () => { page = null; sheet = null; };
}

async function tell() {
  try {
    ({ moments } = await ask('moments'));
  } catch {
    return;
  }
  if (!page) return;
  if (chosen === null && moments.length) chosen = moments[moments.length - 1].number;
  drawPage();
  compare();
}

const nameOf = (moment) => moment?.name || MOMENTS.first;

let timer = 0;
function compare() {
  clearTimeout(timer);
  const moment = moments.find((each) => each.number === chosen);
  if (!moment) return;
  timer = setTimeout(() => ask('since', { number: chosen, size: get('size'), was: `${nameOf(moment)}, ${MOMENTS.was}`, is: MOMENTS.now }).catch(() => {}), 250);
}

function keep(event) {
  event.preventDefault();
  if (!typed.trim()) {
    document.getElementById('moment-name')?.focus();
    return;
  }
  const name = typed.trim();
  typed = '';
  document.getElementById('moment-name').value = '';
  chosen = null;
  told = null;
  askAfter('moment', { name }).then(tell, () => {});
}

function drawPage() {
  if (!page) return;
  const name = make('input', { type: 'text', id: 'moment-name', maxlength: 80, autocomplete: 'off', value: typed, oninput: () => { typed = name.value; } });
  refill(page, make('h2', {}, MOMENTS.title), make('p', { class: 'soft' }, MOMENTS.hint),
      make('form', { class: 'moment-keep', onsubmit: keep }, make('label', { for: 'moment-name' }, MOMENTS.name), name, make('button', { type: 'submit', class: 'chief' }, MOMENTS.keep)),
      make('ul', { class: 'ledger-list' }, ...[...moments].reverse().map((moment) => make('li', {}, make('button', {
        type: 'button', class: 'row moment', 'aria-pressed': moment.number === chosen ? 'true' : 'false',
        onclick: () => { chosen = moment.number; told = null; note = ''; draw(); compare(); },
      }, make('span', {}, nameOf(moment)), make('span', { class: 'soft' }, MOMENTS.after(moment.edits)))))));
}

function draw() {
  drawPage();
  const moment = moments.find((each) => each.number === chosen);
  if (!moment) {
    fill(sheet, make('h2', {}, MOMENTS.title), make('p', { class: 'soft' }, MOMENTS.choose));
    return;
  }
  const head = make('h2', {}, MOMENTS.since(nameOf(moment)));
  if (!told) {
    fill(sheet, head, make('p', { class: 'soft', role: 'status' }, MOMENTS.comparing));
    return;
  }
  fill(sheet, head, note ? make('p', { role: 'status' }, note) : null,
      told.alike ? make('p', {}, MOMENTS.alike) : make('p', { class: 'moment-back' }, make('button', { type: 'button', onclick: back }, MOMENTS.back), make('span', { class: 'soft' }, MOMENTS.backHint)),
      ...(told.alike ? [] : told.undrawn ? [make('p', {}, MOMENTS.undrawn[told.undrawn])] : changes()));
}

function changes() {
  const own = Object.entries(told.changes);
  if (!own.length) return [make('p', {}, MOMENTS.nothing)];
  const size = get('sizes')[get('size')];
  return [told.pictures.length ? make('p', { class: 'soft' }, MOMENTS.size(size)) : null, ...own.map(([piece, sentences]) => {
    const picture = told.pictures.find((each) => each.piece === piece);
    let src = null;
    if (picture) {
      src = URL.createObjectURL(new Blob([picture.svg], { type: 'image/svg+xml' }));
      addresses.push(src);
    }
    return make('section', { class: 'moment-piece' }, make('h3', {}, picture?.title ?? (piece ? piece.replaceAll('_', ' ') : MOMENTS.pattern)),
        src ? make('img', { src, alt: MOMENTS.picture(picture.title, size) }) : null,
        make('ul', {}, ...sentences.map((each) => make('li', {}, set(each)))));
  })];
}

async function back() {
  try {
    await ask('back_to', { number: chosen });
    note = MOMENTS.gone;
  } catch { /* The line is down; the head of the page says so. */ }
}
