// The page before a pattern is open: those of last time, blocks to begin from, whole garments to look at.
import { ask, hear, open, ready } from '../line.js';
import { fill, make, set } from '../dom.js';
import { BLOCKS, RUNS, START } from '../words/start.js';

const place = document.getElementById('start');
let told = null;
let chosen = '';
let title = '';
let run = 'women';

const status = make('p', { class: 'status', role: 'status' });
const refusal = make('p', { class: 'refusal', role: 'alert' });

hear('line', (head) => { if (!head.up) say(START.down, true); });

/** Tells how it stands, or why it cannot be. */
function say(words, wrong = false) {
  status.textContent = wrong ? '' : words;
  refusal.textContent = wrong ? words : '';
  if (wrong) refusal.scrollIntoView({ block: 'nearest' });
}

async function go(word, fields, name) {
  say(START.opening(name));
  try {
    const answer = await ask(word, fields);
    if (answer.opened) location.reload();
    else say(START.why(answer.why, answer.place), true);
  } catch (reason) {
    say(reason.message, true);
  }
}

/** A picture of a garment's pieces, drawn by the server once it is in sight. */
function picture(shelf, name, called) {
  const frame = make('span', { class: 'start-picture' }, make('span', { class: 'soft' }, START.drawing));
  const seen = new IntersectionObserver(async (entries) => {
    if (!entries.some((entry) => entry.isIntersecting)) return;
    seen.disconnect();
    try {
      const { png } = await ask('picture', { shelf, name });
      fill(frame, make('img', { src: `data:image/png;base64,${png}`, alt: START.pieces(called) }));
    } catch {
      fill(frame);
    }
  });
  seen.observe(frame);
  return frame;
}

function folders() {
  const path = make('input', { type: 'text', id: 'typed', autocomplete: 'off', spellcheck: 'false', 'aria-describedby': 'typed-hint' });
  const elsewhere = make('form', { class: 'elsewhere', onsubmit: (event) => {
    event.preventDefault();
    if (path.value.trim()) go('open', { folder: path.value.trim() }, path.value.trim());
  } }, make('label', { for: 'typed' }, START.typed), make('div', { class: 'typed-row' }, path, make('button', { type: 'submit' }, START.open)),
  make('p', { class: 'soft', id: 'typed-hint' }, START.typedHint));
  return make('section', { class: 'start-part', 'aria-labelledby': 'go' }, make('h2', { id: 'go' }, START.go),
      told.folders.length
        ? make('ul', { class: 'start-folders' }, ...told.folders.map((each) => make('li', {}, make('button', {
          type: 'button', class: 'start-folder', onclick: () => go('open', { folder: each.path }, each.title || each.path),
        }, make('b', {}, each.title || each.path), make('span', { class: 'soft' }, each.path)))))
        : make('p', { class: 'soft' }, START.none),
      elsewhere);
}

function begin() {
  const name = make('input', { type: 'text', id: 'name', autocomplete: 'off', maxlength: 80, 'aria-describedby': 'lies', value: title, oninput: () => { title = name.value; } });
  const runs = sizeRuns();
  const blocks = told.starters.map((each) => {
    const called = BLOCKS[each.name] ?? each.name;
    const pick = make('input', { type: 'radio', name: 'block', value: each.name, onchange: () => { chosen = each.name; runs.offer(each); } });
    pick.checked = each.name === chosen;
    return make('li', {}, make('label', { class: 'start-card' }, picture('starters', each.name, called),
        make('span', { class: 'start-words' }, make('span', { class: 'start-name' }, pick, make('b', {}, called)), make('span', { class: 'soft' }, each.words))));
  });
  return make('section', { class: 'start-part', 'aria-labelledby': 'begin' }, make('h2', { id: 'begin' }, START.begin),
      make('form', { onsubmit: (event) => {
        event.preventDefault();
        if (!chosen) say(START.choose, true);
        else if (!title.trim()) { say(START.name, true); name.focus(); } else go('begin', { starter: chosen, run, name: title.trim() }, title.trim());
      } }, make('fieldset', {}, make('legend', { class: 'soft' }, START.blocks), make('ul', { class: 'start-cards four' }, ...blocks)),
      runs.part, make('div', { class: 'begin-row' }, make('label', { for: 'name' }, START.named), name, make('button', { type: 'submit', class: 'chief' }, START.start)),
      make('p', { class: 'soft', id: 'lies' }, START.lies(told.place))));
}

/** The size runs to choose among; those that a block is not drafted for cannot be chosen with it. */
function sizeRuns() {
  const rows = told.runs.map((each) => {
    const words = RUNS[each.name] ?? { title: each.words, fits: '' };
    const pick = make('input', { type: 'radio', name: 'run', value: each.name, onchange: () => { run = each.name; } });
    pick.checked = each.name === run;
    const beside = make('span', { class: 'soft' }, set(words.fits));
    return { each, words, pick, beside, row: make('label', { class: 'start-run' }, pick, make('span', {}, make('b', {}, words.title), beside)) };
  });
  const offer = (block) => {
    for (const { each, words, pick, beside } of rows) {
      pick.disabled = !block.runs.includes(each.name);
      fill(beside, set(pick.disabled ? START.notFor(BLOCKS[block.name] ?? block.name) : words.fits));
    }
    if (!block.runs.includes(run)) rows.find((row) => !row.pick.disabled).pick.click();
  };
  const block = told.starters.find((each) => each.name === chosen);
  if (block) offer(block);
  return { offer, part: make('fieldset', { class: 'start-runs' }, make('legend', {}, START.run),
      make('div', { class: 'start-run-list' }, ...rows.map(({ row }) => row)), make('p', { class: 'soft' }, START.runHint)) };
}

function look() {
  return make('section', { class: 'start-part', 'aria-labelledby': 'look' }, make('h2', { id: 'look' }, START.look),
      make('p', { class: 'soft' }, START.examples(told.place)),
      make('ul', { class: 'start-cards' }, ...told.examples.map((each) => make('li', {}, make('button', {
        type: 'button', class: 'start-card', onclick: () => go('copy', { name: each.name }, each.title),
      }, picture('examples', each.name, each.title), make('span', { class: 'start-words' }, make('b', {}, each.title), make('span', { class: 'soft' }, each.words)))))));
}

async function show() {
  fill(place, make('h1', {}, START.title), status, refusal);
  say(START.asking);
  await ready;
  told = await ask('start');
  say('');
  fill(place, make('header', { class: 'start-head' }, make('p', { class: 'start-house' }, 'Hemwright'), make('h1', {}, START.title), status, refusal),
      folders(), begin(), look());
}

open();
show().catch((reason) => say(reason.message, true));
