// Making: the booklet as it will be read, its steps as cards; a step's own line of the document is one click away.
import { fill, make, set } from '../dom.js';
import { ask, hear } from '../line.js';
import { get, watch } from '../state.js';
import { goTo } from '../text/editor.js';
import { MAKING } from '../words/making.js';

export const wide = true;

let page = null;
let sheet = null;
let told = null;
let part = '';
const addresses = [];

hear('booklet', (head) => {
  told = head;
  for (const each of addresses.splice(0)) URL.revokeObjectURL(each);
  for (const picture of head.pictures) {
    const data = picture.text ?? Uint8Array.from(atob(picture.base64), (c) => c.charCodeAt(0));
    addresses.push(URL.createObjectURL(new Blob([data], { type: picture.type })));
  }
  if (sheet) draw();
});
watch(['revision'], () => { if (sheet) again(); });

export function show(holder) {
  page = holder.page;
  sheet = holder.sheet;
  draw();
  again();
  return () => { page = null; sheet = null; };
}

let timer = 0;
function again() {
  if (told?.revision === get('revision')) return;
  clearTimeout(timer);
  timer = setTimeout(() => ask('booklet').catch(() => {}), 400);
}

function draw() {
  if (!told) {
    fill(sheet, make('h2', {}, MAKING.title), make('p', { class: 'soft', role: 'status' }, MAKING.waiting));
    return;
  }
  const sections = told.sections;
  const shown = sections.find((each) => each.id === part) ?? sections.find((each) => each.blocks.some((block) => block.kind === 'step')) ?? sections[0];
  part = shown?.id ?? '';
  fill(page, make('h2', {}, MAKING.title), make('ul', { class: 'parts' }, ...sections.map((each) => make('li', {}, make('button', {
    type: 'button', class: 'row', 'aria-pressed': each === shown ? 'true' : 'false', onclick: () => { part = each.id; draw(); sheet.scrollTop = 0; },
  }, ...words(each.title))))), ...told.findings.map((each) => make('p', { class: `grid-problem ${each.status}` }, set(each.message), ' ', set(each.mend))));
  fill(sheet, shown ? make('h2', {}, ...words(shown.title)) : make('p', { class: 'soft' }, MAKING.none), make('div', { class: 'leaf' }, ...(shown?.blocks ?? []).map(block)));
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
  return make('figure', {}, make('img', { src: addresses[told1.picture], alt: told1.alt }), told1.caption.length ? make('figcaption', {}, ...words(told1.caption)) : null);
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
  step: (b) => make('section', { class: 'step-card' }, b.figure ? figure(b.figure) : null, make('div', {},
      make('h3', {}, ...words(b.title)), ...b.blocks.map(block), lineOf(b.id))),
};

function block(b) {
  return SHOW[b.kind]?.(b) ?? '';
}

/** The way to the line that says a step, where the document names it. */
function lineOf(id) {
  const place = get('places').find((each) => each[0] === id);
  return place ? make('button', { type: 'button', class: 'link', onclick: () => goTo(place[2]) }, MAKING.line(place[4])) : null;
}
