// A seam walked: one piece rolls along the other, stitch line on stitch line, and what is left over is a thick chalk line.
import { fill, make, set } from '../dom.js';
import { ask } from '../line.js';
import { get, watch } from '../state.js';
import { looked, paintOver, repaint } from '../table/table.js';
import { drawing } from '../table/pieces.js';
import { enter } from '../table/canvas.js';
import { WALK } from '../words/walk.js';

const LASTS = 4500;
let now = null;

/** A button for each seam that an edge is sewn in. */
export function walks(seams) {
  return seams?.length ? make('div', { class: 'acts walks' }, ...seams.map((seam) => make('button', {
    type: 'button', 'data-walk': seam, onclick: () => begin(seam),
  }, WALK.start(seam)))) : null;
}

watch(['selected', 'job', 'pieces'], () => { if (now) leave(); });
watch(['size'], () => { if (now) begin(now.seam, now.choice); });

async function begin(seam, choice = {}) {
  leave();
  let answer;
  try {
    answer = await ask('walk', { seam, size: get('size'), ...choice });
  } catch {
    return;
  }
  if (answer.steps < 2) return;
  now = { seam, answer, choice, at: 0, unpaint: paintOver(paint), still: matchMedia('(prefers-reduced-motion: reduce)').matches };
  build();
  if (!now.still) play();
}

function leave() {
  if (!now) return;
  now.unpaint();
  now = null;
  document.getElementById('sentence').hidden = true;
  repaint();
}

function build() {
  const { answer, seam } = now;
  const slider = make('input', { type: 'range', min: 0, max: answer.steps - 1, step: 1, value: 0, 'aria-label': WALK.along });
  slider.addEventListener('input', () => { now.playing = 0; now.at = Number(slider.value); repaint(); });
  now.slider = slider;
  const place = document.getElementById('sentence');
  place.hidden = false;
  place.onkeydown = (event) => { if (event.key === 'Escape' && now) leave(); };
  fill(place, make('p', {}, make('b', {}, WALK.title(seam)), ' ', set(WALK.lengths(answer))),
      layers(answer, seam),
      answer.notches.length ? make('ol', { class: 'walk-notches' }, ...answer.notches.map((notch, index) => make('li', {
        class: notch.met ? '' : 'apart',
      }, set(WALK.notch(notch, index))))) : make('p', { class: 'soft' }, WALK.bare),
      slider, make('div', { class: 'acts' },
          make('button', { type: 'button', class: 'chief', onclick: play }, WALK.again),
          make('button', { type: 'button', onclick: leave }, WALK.leave)));
  repaint();
}

/** Of a seam with more than one pass, or with more than two layers: which of them are walked. */
function layers(answer, seam) {
  const own = answer.passes[answer.pass];
  if (answer.passes.length < 2 && own.length < 3) return null;
  const anew = (choice, id) => begin(seam, choice).then(() => document.getElementById(id)?.focus());
  const pick = (id, words, options, value, change) => make('label', { class: 'walk-pick' }, words, ' ',
      make('select', { id, onchange: (event) => change(Number(event.target.value), id) }, ...options.map((each) => make('option', { value: each.at, selected: each.at === value }, each.words))));
  const listed = (names) => names.map((words, at) => ({ at, words }));
  const { pass, still, rolls } = answer;
  return make('div', { class: 'walk-layers' },
      answer.passes.length > 1 ? pick('walk-pass', WALK.pass, listed(answer.passes.map((names, at) => WALK.ofPass(at + 1, names))), pass, (at, id) => anew({ pass: at }, id)) : null,
      own.length > 2 ? pick('walk-still', WALK.still, listed(own), still, (at, id) => anew({ pass, still: at, rolls: at === rolls ? still : rolls }, id)) : null,
      own.length > 2 ? pick('walk-rolls', WALK.rolls, listed(own).filter((each) => each.at !== still), rolls, (at, id) => anew({ pass, still, rolls: at }, id)) : null);
}

/** Rolls from end to end; where the system asks for less motion the end is shown at once. */
function play() {
  if (!now) return;
  const mine = now;
  const last = mine.answer.steps - 1;
  if (mine.still) {
    mine.at = last;
    mine.slider.value = last;
    repaint();
    return;
  }
  const since = performance.now();
  mine.playing = since;
  const step = (time) => {
    if (now !== mine || mine.playing !== since) return;
    mine.at = Math.min(last, (Math.max(0, time - since) / LASTS) * last);
    mine.slider.value = Math.round(mine.at);
    repaint();
    if (mine.at < last) requestAnimationFrame(step);
  };
  requestAnimationFrame(step);
}

/** The numbers of a step, between two where it lies between; over a joint of pieces it is the nearer one. */
function stepAt(at) {
  const n = now.answer.numbers;
  const low = Math.floor(at);
  const a = n.subarray(9 * low, 9 * low + 9);
  if (low + 1 >= now.answer.steps) return a;
  const b = n.subarray(9 * low + 9, 9 * low + 18);
  const t = at - low;
  if (a[6] !== b[6] || a[7] !== b[7] || a[8] !== b[8]) return t < 0.5 ? a : b;
  return Float64Array.from(a, (value, index) => {
    if (index > 5) return value;
    let change = b[index] - value;
    if (index === 2 || index === 5) change = Math.atan2(Math.sin(change), Math.cos(change));
    return value + t * change;
  });
}

function paint(context, view, ink) {
  if (!now) return;
  const step = stepAt(now.at);
  const still = now.answer.pieces[step[6]];
  const rolls = now.answer.pieces[step[7]];
  const [one, other] = [drawing(still, view.size), drawing(rolls, view.size)];
  const place = view.places.get(still);
  if (!one || !other || !place) return;
  const px = 1 / view.camera.scale;
  const roll = () => {
    enter(context, view, place, one);
    context.translate(step[0], step[1]);
    context.rotate(step[2]);
    if (step[8]) context.scale(1, -1);
    context.rotate(-step[5]);
    context.translate(-step[3], -step[4]);
  };
  roll();
  context.fillStyle = ink.wash;
  context.globalAlpha = 0.72;
  context.fill(other.stitchLine());
  context.globalAlpha = 1;
  context.strokeStyle = ink.chalk;
  context.lineWidth = 1.6 * px;
  context.stroke(other.stitchLine());
  ticks(context, other, px);
  enter(context, view, place, one);
  context.strokeStyle = ink.ink;
  ticks(context, one, px);
  if (now.at >= now.answer.steps - 1.01) {
    if (now.answer.rest === 1) roll();
    rest(context, ink, px);
  }
  enter(context, view, place, one);
  context.beginPath();
  context.arc(step[0], step[1], 4.5 * px, 0, 2 * Math.PI);
  context.fillStyle = ink.chalk;
  context.fill();
}

function ticks(context, drawn, px) {
  const n = drawn.numbers;
  context.lineWidth = 2 * px;
  context.beginPath();
  for (const notch of drawn.parts('notch')) {
    for (let i = 0, at = notch.at + 2; i < notch.ticks; i++, at += 4) {
      context.moveTo(n[notch.at], n[notch.at + 1]);
      context.lineTo(n[at], n[at + 1]);
    }
  }
  context.stroke();
}

/** What one is longer than the other, or where it gapes. */
function rest(context, ink, px) {
  const n = now.answer.numbers.subarray(9 * now.answer.steps);
  if (n.length < 4) return;
  context.strokeStyle = ink.rust;
  context.lineWidth = 6 * px;
  context.lineCap = 'round';
  context.beginPath();
  for (let i = 0; i + 1 < n.length; i += 2) (i === 0 ? context.moveTo : context.lineTo).call(context, n[i], n[i + 1]);
  context.stroke();
  context.lineCap = 'butt';
}
