// Making: the booklet as it will be read, its steps as cards, beside the words that she writes for it.
import { fill, make, set } from '../dom.js';
import { ask, hear } from '../line.js';
import { get, put, watch } from '../state.js';
import { goTo, mend } from '../text/editor.js';
import { goToWords, writeFor } from '../text/prose.js';
import { MAKING } from '../words/making.js';
import { takePicture } from './pictures.js';

export const wide = true;

let page = null;
let sheet = null;
let told = null;
let part = '';
let trouble = '';
const addresses = new Map();

hear('booklet', (head) => {
  told = head;
  for (const picture of head.pictures) {
    const data = picture.text ?? Uint8Array.from(atob(picture.base64), (c) => c.charCodeAt(0));
    addresses.set(picture.key, URL.createObjectURL(new Blob([data], { type: picture.type })));
  }
  forget(JSON.stringify(head.sections));
  if (sheet) draw();
});
watch(['revision'], () => { if (sheet) again(); });
watch(['writing'], follow);

/** Figures that the booklet has no more. */
function forget(all) {
  for (const [key, address] of addresses) {
    if (all.includes(key)) continue;
    URL.revokeObjectURL(address);
    addresses.delete(key);
  }
}

export function show(holder) {
  page = holder.page;
  sheet = holder.sheet;
  blocksShown = [];
  draw();
  again();
  return () => { page = null; sheet = null; };
}

let timer = 0;
function again(now = false) {
  if (!now && told?.revision === get('revision')) return;
  clearTimeout(timer);
  timer = setTimeout(() => ask('booklet').catch(() => {}), told && !now ? 150 : 0);
  const state = sheet?.querySelector('.leaf-state');
  if (state) state.textContent = MAKING.late;
}

/** The booklet turns to what she is writing. */
function follow() {
  const writing = get('writing');
  if (!sheet || !told || !writing) return;
  const there = told.sections.some((each) => each.id === writing.part);
  if (there && part !== writing.part) {
    part = writing.part;
    draw();
  }
  const card = writing.step ? sheet.querySelector(`[data-step="${CSS.escape(writing.step)}"]`) : null;
  for (const each of sheet.querySelectorAll('.step-card.written')) each.classList.remove('written');
  card?.classList.add('written');
  card?.scrollIntoView({ block: 'nearest' });
}

function titleOf(section) {
  return section.id === 'cover' ? [MAKING.cover] : section.title;
}

function draw() {
  if (!told) {
    fill(sheet, make('h2', {}, MAKING.title), make('p', { class: 'soft', role: 'status' }, MAKING.waiting));
    fill(page, make('h2', {}, MAKING.title), make('p', { class: 'soft' }, MAKING.hint));
    return;
  }
  const sections = told.sections;
  const shown = sections.find((each) => each.id === part) ?? sections.find((each) => each.blocks.some((block) => block.kind === 'step')) ?? sections[0];
  part = shown?.id ?? '';
  drawPage(shown);
  const top = sheet.scrollTop;
  let leaf = sheet.querySelector('.leaf');
  if (!leaf || leaf.dataset.part !== part) {
    leaf = make('div', { class: 'leaf', 'data-part': part });
    blocksShown = [];
    fill(sheet, make('div', { class: 'leaf-head' }), leaf);
  }
  fill(sheet.querySelector('.leaf-head'), shown ? make('h2', {}, ...words(shown.title)) : make('p', { class: 'soft' }, MAKING.none),
      shown && shown.id !== 'glossary' ? make('button', { type: 'button', onclick: () => write(shown.id) }, MAKING.write) : null,
      make('p', { class: 'leaf-state soft', role: 'status' }, trouble || (told.revision === get('revision') ? '' : MAKING.late)));
  keep(leaf, shown?.blocks ?? []);
  sheet.scrollTop = top;
  if (get('writing')?.part === part) follow();
}

function drawPage(shown) {
  const focused = page.contains(document.activeElement) ? document.activeElement.dataset.part : null;
  const amiss = told.findings.filter((each) => each.file === 'booklet.md');
  const others = told.findings.filter((each) => each.file !== 'booklet.md');
  fill(page, make('h2', {}, MAKING.title),
      amiss.length ? make('div', { class: 'words-amiss' }, make('p', {}, MAKING.amiss(amiss.length)), ...amiss.map(problem)) : null,
      ...others.map((each) => make('p', { class: `grid-problem ${each.status}` }, set(each.message), ' ', set(each.mend))),
      make('ul', { class: 'parts' }, ...told.sections.map((each) => make('li', {}, make('button', {
        type: 'button', class: 'row', 'data-part': each.id, 'aria-pressed': each === shown ? 'true' : 'false', onclick: () => turn(each.id),
      }, ...words(titleOf(each)))))), make('p', { class: 'soft hint' }, MAKING.hint));
  if (focused) page.querySelector(`[data-part="${CSS.escape(focused)}"]`)?.focus();
}

function problem(each) {
  return make('p', { class: `grid-problem ${each.status}` }, set(each.message), ' ', set(each.mend), make('span', { class: 'step-ways' },
      make('button', { type: 'button', class: 'link', onclick: () => goToWords(each.from, each.revision) }, MAKING.show),
      each.edit ? make('button', { type: 'button', class: 'link', onclick: () => mend(each) }, MAKING.mend) : null));
}

function turn(id) {
  part = id;
  put({ writing: null });
  draw();
  sheet.scrollTop = 0;
}

function write(id, step = '') {
  writeFor(id, step).catch((reason) => { trouble = reason.message; draw(); });
}

let blocksShown = [];

/** Blocks that are as they were stay as they are, so that nothing jumps while she writes. */
function keep(leaf, blocks) {
  const keys = blocks.map((each) => JSON.stringify(each));
  const old = new Map();
  blocksShown.forEach((key, at) => { if (!old.has(key)) old.set(key, leaf.children[at]); });
  const nodes = keys.map((key, at) => {
    const known = old.get(key);
    old.delete(key);
    return known ?? block(blocks[at]);
  });
  const focused = document.activeElement;
  nodes.forEach((node, at) => { if (leaf.children[at] !== node) leaf.insertBefore(node, leaf.children[at] ?? null); });
  while (leaf.children.length > nodes.length) leaf.lastChild.remove();
  if (leaf.contains(focused)) focused.focus();
  blocksShown = keys;
}

/** Running text as nodes. */
function words(parts) {
  return parts.map((each) => {
    if (typeof each === 'string') return set(each);
    if (each[0] === 'break') return make('br');
    return make(each[0] === 'strong' ? 'b' : 'em', {}, ...words(each.slice(1)));
  });
}

function figure(told1) {
  const image = make('img', { src: addresses.get(told1.picture), alt: told1.alt });
  if (told1.wide) image.style.aspectRatio = `${told1.wide} / ${told1.high}`;
  return make('figure', {}, image, told1.caption.length ? make('figcaption', {}, ...words(told1.caption)) : null);
}

const SHOW = {
  paragraph: (b) => make('p', { class: `tone-${b.tone}` }, ...words(b.words)),
  heading: (b) => make('h3', { class: `leaf-heading level-${b.level}` }, ...words(b.words)),
  list: (b) => make(b.numbered ? 'ol' : 'ul', { class: 'leaf-list' }, ...b.items.map((item) => make('li', {}, ...words(item)))),
  glossary: (b) => make('dl', { class: 'leaf-glossary' }, ...b.entries.flatMap((each) => [make('dt', {}, ...words(each.word)), make('dd', {}, ...words(each.meaning))])),
  gallery: (b) => make('div', { class: 'leaf-gallery' }, ...b.figures.map(figure)),
  table: (b) => make('div', { class: 'leaf-table', tabindex: 0, role: 'group', 'aria-label': MAKING.table }, make('table', {}, make('caption', {}, ...words(b.caption)),
      make('thead', {}, make('tr', {}, ...b.head.map((cell) => make('th', { scope: 'col' }, ...words(cell))))),
      make('tbody', {}, ...b.rows.map((row) => make('tr', {}, ...row.map((cell, i) => make(i === 0 ? 'th' : 'td', i === 0 ? { scope: 'row' } : {}, ...words(cell)))))))),
  step: (b) => make('section', { class: 'step-card', 'data-step': b.id }, make('div', { class: 'step-figure' }, b.figure ? figure(b.figure) : null, ways(b)), make('div', {},
      make('h3', {}, ...words(b.title)), ...b.blocks.map(block), make('div', { class: 'step-ways' }, lineOf(b.id),
          make('button', { type: 'button', class: 'link', onclick: () => write('steps', b.id) }, MAKING.writeStep)))),
};

function block(b) {
  return SHOW[b.kind]?.(b) ?? make('p');
}

/** Her own picture in the place of a step's drawing. */
function ways(b) {
  const own = Boolean(b.figure?.own);
  const told1 = (reason) => { trouble = reason?.message ?? ''; if (sheet) draw(); again(true); };
  return make('div', { class: 'step-ways' },
      make('button', { type: 'button', class: 'link', onclick: () => takePicture(b.id).then((taken) => { if (taken) told1(); }, told1) }, own ? MAKING.other : MAKING.picture),
      own ? make('button', { type: 'button', class: 'link', onclick: () => ask('take_out_picture', { name: b.id }).then(() => told1(), told1) }, MAKING.ours) : null);
}

/** The way to the line that says a step, where the document names it. */
function lineOf(id) {
  const place = get('places').find((each) => each[0] === id);
  return place ? make('button', { type: 'button', class: 'link', onclick: () => goTo(place[2], get('placesOf')) }, MAKING.line(place[4])) : null;
}
