// Paper: the pages as they will be printed, lying as they are taped together, and the files made of them.
import { fill, make, refill, set } from '../dom.js';
import { ask, hear } from '../line.js';
import { get, watch } from '../state.js';
import { goTo } from '../text/editor.js';
import { PAPER } from '../words/paper.js';

export const wide = true;

let page = null;
let sheet = null;
let papers = null;
let told = null;
let near = null;
let made = null;
let progress = null;
let refused = '';
let asked = '';
let number = 0;
const choice = { paper: 'either', one: false, view: '', stitch: null, black: false, overlap: 0 };
const drawn = new Map();

hear('pages', (head) => {
  if (head.number !== number) return;
  told = head;
  for (const address of drawn.values()) address.then(URL.revokeObjectURL, () => {});
  drawn.clear();
  if (near !== null && near >= told.pages.length) near = null;
  if (sheet) draw();
});
hear('printing', (head) => { progress = head; if (page) drawPage(); });
hear('printed', (head) => { progress = null; made = head; if (page) drawPage(); });
watch(['revision', 'size'], () => { if (sheet) again(); });

export function show(holder) {
  page = holder.page;
  sheet = holder.sheet;
  asked = '';
  draw();
  again();
  return () => { page = null; sheet = null; };
}

/** What is asked for, as the server wants it. */
function wanted() {
  return { paper: choice.paper, size: choice.one ? get('size') : -1, view: choice.view, stitch: choice.stitch ?? papers?.stitch ?? true, black: choice.black, overlap: choice.overlap };
}

let timer = 0;
/** Asks once the tape and the document stand still. */
function again() {
  if (!papers || papers.revision !== get('revision')) {
    ask('papers').then((head) => { papers = { ...head, revision: get('revision') }; again(); }, () => {
      papers = null;
      told = null;
      if (sheet) fill(sheet, make('h2', {}, PAPER.name), make('p', { class: 'soft' }, PAPER.nothing));
    });
    return;
  }
  if (!choice.one && told && asked === `${get('revision')} ${JSON.stringify(wanted())}`) {
    draw();
    return;
  }
  clearTimeout(timer);
  timer = setTimeout(async () => {
    const key = `${get('revision')} ${JSON.stringify(wanted())}`;
    if (key === asked || !sheet) return;
    asked = key;
    try {
      number = (await ask('pages', wanted())).number;
    } catch (reason) {
      refused = reason.message;
      asked = '';
    }
  }, told ? 300 : 0);
  drawPage();
}

const choose = (changes) => { Object.assign(choice, changes); refused = ''; again(); };

/** The picture of a page, drawn by the server when it is first wanted. */
function picture(at) {
  if (!drawn.has(at)) {
    drawn.set(at, ask('page', { number, at }).then((head) => URL.createObjectURL(new Blob([head.svg], { type: 'image/svg+xml' }))));
  }
  return drawn.get(at);
}

function nameOf(at) {
  const { kind, tile } = told.pages[at];
  return kind === 'pieces' ? PAPER.tile(tile) : [PAPER.page[kind], tile].filter(Boolean).join(' ');
}

function leaf(at, needed) {
  const { width, height, kind } = told.pages[at];
  const face = make('span', { class: 'leaf-face' });
  face.style.aspectRatio = `${width} / ${height}`;
  const seen = new IntersectionObserver((entries) => {
    if (!entries.some((entry) => entry.isIntersecting)) return;
    seen.disconnect();
    picture(at).then((src) => fill(face, make('img', { src, alt: '' })), () => {});
  }, { root: sheet, rootMargin: '200px' });
  seen.observe(face);
  return make('button', {
    type: 'button', class: `paper-leaf ${kind}${needed ? '' : ' spare'}`, 'data-page': at, onclick: () => { near = at; draw(); sheet.scrollTop = 0; },
  }, face, make('span', { class: 'leaf-name' }, nameOf(at), make('span', { class: 'soft' }, ` \u00b7 ${PAPER.number(at + 1)}`)));
}

/** A tile's row and column by its name: B3; after Z comes AA. */
function cellOf(tile) {
  const [, letters, column] = /^([A-Z]+)(\d+)$/.exec(tile);
  return { row: letters.charCodeAt(0) - 64 + 26 * (letters.length - 1), column: Number(column) };
}

function draw() {
  if (!sheet) return;
  drawPage();
  if (!told) {
    fill(sheet, make('h2', {}, PAPER.name), make('p', { class: 'soft', role: 'status' }, PAPER.waiting));
    return;
  }
  if (near !== null) {
    drawNear();
    return;
  }
  const pages = told.pages.map((each, at) => ({ ...each, at }));
  const size = get('sizes')[get('size')];
  const front = pages.filter((each) => each.kind === 'key' || each.kind === 'table');
  fill(sheet, make('h2', {}, pages.length ? PAPER.title(pages.length, told.paper) : PAPER.none),
      make('p', { class: 'soft' }, choice.one || !pages.length ? PAPER.hintPlain : PAPER.hint(size)),
      front.length ? make('section', {}, make('h3', {}, PAPER.front), make('div', { class: 'leaves' }, ...front.map((each) => leaf(each.at, true)))) : null,
      ...told.groups.map((group) => tiles(group, pages, size)));
}

/** Sizes in the chart's order: the names of an object come in an order of their own. */
const inOrder = (names) => get('sizes').filter((each) => names.includes(each));
const sizesOf = (group) => inOrder(Object.keys(group.tiles));

function tiles(group, pages, size) {
  const sizes = sizesOf(group);
  const own = pages.filter((each) => inOrder(each.sizes).join() === sizes.join() && each.kind !== 'key' && each.kind !== 'table');
  const maps = own.filter((each) => each.kind === 'map');
  const pieces = own.filter((each) => each.kind === 'pieces');
  const needed = group.tiles[size];
  const field = make('div', { class: 'tiles' }, ...pieces.map((each) => {
    const { row, column } = cellOf(each.tile);
    const button = leaf(each.at, choice.one || Boolean(needed?.includes(each.tile)));
    button.style.gridArea = `${row} / ${column}`;
    return button;
  }));
  return make('section', {}, make('h3', {}, group.title), maps.length ? make('div', { class: 'leaves' }, ...maps.map((each) => leaf(each.at, true))) : null, field);
}

function drawNear() {
  const image = make('img', { alt: nameOf(near), class: 'near-page' });
  const { width, height } = told.pages[near];
  image.style.aspectRatio = `${width} / ${height}`;
  picture(near).then((src) => { image.src = src; }, () => {});
  const step = (by) => { near = Math.max(0, Math.min(told.pages.length - 1, near + by)); draw(); sheet.querySelector(by > 0 ? '.after' : '.before')?.focus(); };
  fill(sheet, make('div', { class: 'near-acts' }, make('button', { type: 'button', onclick: () => { const at = near; near = null; draw(); sheet.querySelector(`[data-page="${at}"]`)?.focus(); } }, PAPER.back),
      make('button', { type: 'button', class: 'before', disabled: near === 0, onclick: () => step(-1) }, PAPER.before),
      make('button', { type: 'button', class: 'after', disabled: near === told.pages.length - 1, onclick: () => step(1) }, PAPER.after),
      make('h2', {}, nameOf(near), make('span', { class: 'soft' }, ` \u00b7 ${PAPER.number(near + 1)}`))), image);
}

function radio(group, value, current, words, changes) {
  const input = make('input', { type: 'radio', name: group, value, onchange: () => choose(changes) });
  input.checked = value === current;
  return make('label', { class: 'pick' }, input, words);
}

function check(words, current, change) {
  const input = make('input', { type: 'checkbox', onchange: () => choose(change(input.checked)) });
  input.checked = current;
  return make('label', { class: 'pick' }, input, words);
}

function drawPage() {
  if (!page || !papers) return;
  const focus = document.activeElement;
  const back = page.contains(focus) ? { name: focus.name, value: focus.value, id: focus.id } : null;
  const size = get('sizes')[get('size')];
  const overlap = make('input', { type: 'number', id: 'overlap', min: 0, max: 50, step: 1, value: choice.overlap, onchange: () => choose({ overlap: Math.max(0, Math.min(50, Number(overlap.value) || 0)) }) });
  const group = (title, ...inner) => make('fieldset', { class: 'picks' }, make('legend', {}, title), ...inner);
  refill(page, make('h2', {}, PAPER.name),
      group(PAPER.paper, ...papers.papers.map((each) => radio('paper', each.name, choice.paper, each.title, { paper: each.name }))),
      group(PAPER.sizes, radio('sizes', 'every', choice.one ? 'one' : 'every', PAPER.every, { one: false }), radio('sizes', 'one', choice.one ? 'one' : 'every', PAPER.one(size), { one: true })),
      papers.views.length > 1 ? group(PAPER.view, radio('view', '', choice.view, PAPER.all, { view: '' }), ...papers.views.map((view) => radio('view', view, choice.view, PAPER.ofView(view), { view }))) : null,
      make('div', { class: 'picks' }, check(PAPER.stitch, choice.stitch ?? papers.stitch, (stitch) => ({ stitch })), check(PAPER.black, choice.black, (black) => ({ black })),
          make('div', { class: 'pick' }, make('label', { for: 'overlap' }, PAPER.overlap), overlap, PAPER.mm)),
      making(), ...(told?.findings ?? []).map((each) => make('p', { class: `grid-problem ${each.status}` }, set(each.message), ' ', set(each.mend),
          each.from !== undefined ? make('button', { type: 'button', class: 'link', onclick: () => goTo(each.from, each.revision) }, ` ${each.file}, ${each.line}`) : null)),
      needs());
  if (back) [...page.querySelectorAll('input, button')].find((each) => (back.id ? each.id === back.id : back.name && each.name === back.name && each.value === back.value))?.focus();
}

function making() {
  const print = (every) => { made = null; progress = { done: 0, of: 1 }; drawPage(); ask('print', { ...wanted(), every }).catch((reason) => { progress = null; refused = reason.message; drawPage(); }); };
  return make('div', { class: 'paper-acts' },
      make('button', { type: 'button', class: 'chief', disabled: progress !== null, onclick: () => print(false) }, PAPER.make),
      make('button', { type: 'button', disabled: progress !== null, onclick: () => print(true) }, PAPER.makeEvery),
      make('p', { role: 'status', class: 'publishing' }, progress ? make('progress', { value: progress.done, max: Math.max(1, progress.of), 'aria-label': PAPER.making }) : null),
      refused ? make('p', { class: 'grid-problem fail' }, refused) : null, made ? files() : null);
}

function files() {
  if (made.trouble !== undefined) return make('p', { class: 'grid-problem fail' }, PAPER.trouble(made.trouble));
  return make('div', { class: 'made' }, make('p', {}, PAPER.made(made.folder)), make('ul', {}, ...made.files.map((file) => make('li', {},
      make('span', {}, file.name, file.pages > 1 ? make('span', { class: 'soft' }, ` \u00b7 ${PAPER.pages(file.pages)}`) : null),
      make('button', { type: 'button', class: 'link', onclick: () => save(file.name) }, PAPER.save)))));
}

async function save(name) {
  try {
    const file = await ask('printed_file', { name });
    const address = URL.createObjectURL(new Blob([Uint8Array.from(atob(file.base64), (c) => c.charCodeAt(0))], { type: file.type }));
    make('a', { href: address, download: name }).click();
    setTimeout(() => URL.revokeObjectURL(address), 10000);
  } catch (reason) {
    refused = reason.message;
    drawPage();
  }
}

/** How many pages each size needs. */
function needs() {
  if (!told?.groups.length || choice.one) return null;
  const now = get('sizes')[get('size')];
  return make('details', { class: 'ledger-sizes' }, make('summary', {}, PAPER.needs), make('table', {}, make('thead', {}, make('tr', {}, ...PAPER.columns.map((each) => make('th', { scope: 'col' }, each)))),
      make('tbody', {}, ...told.groups.flatMap((group) => sizesOf(group).map((size) => make('tr', size === now ? { class: 'current' } : {},
          make('th', { scope: 'row' }, size), make('td', {}, String(group.tiles[size].length))))))));
}
