// The table: a canvas, looked at with wheel, fingers and keys; what is pointed at is selected, what is
// selected can be dragged.
import { make } from '../dom.js';
import { get, put, select, watch } from '../state.js';
import { TABLE } from '../words/table.js';
import { ADD } from '../words/add.js';
import { startAdding } from '../add/add.js';
import { Camera } from './camera.js';
import { thingAt, pinAt } from './hit.js';
import { layOut } from './layout.js';
import { names, whenPiecesChange } from './pieces.js';
import { paint } from './paint.js';
import { RULER } from './rulers.js';
import { startDragging } from './drag.js';
import { nudgeKey } from './nudge.js';
import { underlay } from './under.js';

const canvas = make('canvas', { tabindex: 0, role: 'img', 'aria-label': TABLE.canvas });
const context = canvas.getContext('2d', { alpha: false });
const empty = make('p', { class: 'table-empty', hidden: true }, TABLE.empty);
const camera = new Camera();
const overlays = [];
const view = {
  camera, width: 0, height: 0, ratio: 1, places: new Map(), sizes: [], size: 0, styles: [],
  selected: null, lit: [], hover: null, stitch: true, points: false, pins: [], overlays,
};
let box = [0, 0, 1, 1];
let touched = false;
let asked = 0;
let pieceNames = '';

/** Has something of its own painted on the table, over the pieces: (context, view, inks) => …; call it to take it away. */
export function paintOver(painter) {
  overlays.push(painter);
  repaint();
  return () => { overlays.splice(overlays.indexOf(painter), 1); repaint(); };
}

/** The thing under a place of the canvas. */
export function thingUnder(px, py) {
  return thingAt(context, view, px, py);
}

let taker = null;

/**
 * Gives the pointer to someone else until it is released: `move` and `click` hear places of the canvas, `key` hears keys
 * and says whether they were its own. Panning and zooming go on.
 */
export function takePointer(other) {
  taker = other;
  canvas.style.cursor = 'crosshair';
  return () => {
    taker = null;
    canvas.style.cursor = 'default';
    arrange();
  };
}

/** The table as it is looked at now. */
export function looked() {
  return view;
}

/** Paints with the next frame. */
export function repaint() {
  if (!asked) asked = requestAnimationFrame(paintNow);
}

/** Paints at once, in place of what was to be painted with the next frame. */
export function paintNow() {
  cancelAnimationFrame(asked);
  asked = 0;
  if (view.width > 0) paint(context, view);
}

/** Shows all pieces. */
export function showAll() {
  touched = false;
  fit();
}

function fit() {
  camera.fit(box, view.width, view.height, { left: RULER + 26, right: 28, top: RULER + 50, bottom: 62 });
  repaint();
}

function arrange() {
  const laid = layOut(Math.max(0.4, view.width / Math.max(1, view.height)));
  view.places = laid.places;
  box = laid.box;
  if (!touched) fit();
}

/** While she points nothing moves: what is new is laid where there is room, the rest stays. */
function layBeside() {
  const laid = layOut(Math.max(0.4, view.width / Math.max(1, view.height)));
  for (const [name, place] of laid.places) if (!view.places.has(name)) view.places.set(name, place);
}

function sized() {
  const holder = canvas.parentElement;
  view.ratio = window.devicePixelRatio || 1;
  view.width = holder.clientWidth;
  view.height = holder.clientHeight;
  canvas.width = Math.round(view.width * view.ratio);
  canvas.height = Math.round(view.height * view.ratio);
  canvas.style.width = `${view.width}px`;
  canvas.style.height = `${view.height}px`;
  if (!touched) arrange();
  paintNow();
}

function shownSizes() {
  const sizes = [];
  for (let i = get('from'); i <= get('to'); i++) sizes.push(i);
  return sizes.length ? sizes : [get('size')];
}

/** Starts the table. */
export function startTable() {
  const holder = document.getElementById('table');
  const button = (word, act) => make('button', { type: 'button', class: 'plain', onclick: act }, word);
  const toggle = (word, name) => {
    const input = make('input', { type: 'checkbox', onchange: () => { view[name] = input.checked; repaint(); } });
    input.checked = view[name];
    return make('label', { class: 'toggle' }, input, word);
  };
  const centre = (factor) => () => { touched = true; camera.zoom(factor, view.width / 2, view.height / 2); repaint(); };
  const adds = make('div', { class: 'table-acts table-adds', role: 'group', 'aria-label': ADD.group });
  holder.append(canvas, empty, adds, make('div', { class: 'table-acts', role: 'group', 'aria-label': 'How the table is shown' },
      button(TABLE.closer, centre(1.25)), button(TABLE.farther, centre(0.8)), button(TABLE.all, showAll),
      toggle(TABLE.stitch, 'stitch'), toggle(TABLE.points, 'points'), underlay()));
  new ResizeObserver(sized).observe(holder);
  document.fonts.ready.then(repaint);
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', repaint);
  whenPiecesChange(() => {
    const now = names().join(' ');
    if (now !== pieceNames) {
      pieceNames = now;
      if (taker) layBeside();
      else arrange();
    }
    empty.hidden = names().length > 0;
    repaint();
  });
  watch(['size', 'from', 'to', 'styles'], () => {
    view.size = get('size');
    view.sizes = shownSizes();
    view.styles = get('styles') ?? [];
    repaint();
  });
  watch(['selected', 'lit'], () => {
    view.selected = get('selected');
    view.lit = get('lit');
    repaint();
  });
  watch(['findings', 'job'], () => {
    view.pins = get('job') === 'proof' || get('job') === 'draft' ? get('findings').filter((each) => each.piece) : [];
    repaint();
  });
  pointing(holder);
  keys();
  startAdding(adds);
}

function pointing() {
  const fingers = new Map();
  let panning = null;
  let pinch = 0;
  const dragging = startDragging(view, repaint, paintNow);
  canvas.addEventListener('pointerdown', (event) => {
    canvas.focus({ preventScroll: true });
    canvas.setPointerCapture(event.pointerId);
    fingers.set(event.pointerId, [event.offsetX, event.offsetY]);
    if (fingers.size === 2) {
      pinch = spread(fingers);
      panning = null;
      dragging.cancel();
      return;
    }
    const near = event.pointerType === 'touch' ? 20 : 9;
    const pin = pinAt(view, event.offsetX, event.offsetY);
    const thing = event.button === 0 && !pin ? thingAt(context, view, event.offsetX, event.offsetY, near) : null;
    panning = { x: event.offsetX, y: event.offsetY, moved: false, thing, pin };
    if (taker) return;
    if (thing && event.button === 0) dragging.begin(thing, event.offsetX, event.offsetY);
  });
  canvas.addEventListener('pointermove', (event) => {
    if (!fingers.has(event.pointerId)) {
      const thing = thingAt(context, view, event.offsetX, event.offsetY);
      const changed = thing?.kind !== view.hover?.kind || thing?.name !== view.hover?.name || thing?.piece !== view.hover?.piece;
      if (changed) {
        view.hover = thing?.kind === 'piece' ? null : thing;
        canvas.style.cursor = taker ? 'crosshair' : thing ? (thing.kind === 'point' || thing.kind === 'notch' ? 'move' : 'pointer') : 'default';
        repaint();
      }
      taker?.move(event.offsetX, event.offsetY, event);
      return;
    }
    fingers.set(event.pointerId, [event.offsetX, event.offsetY]);
    if (fingers.size === 2) {
      const now = spread(fingers);
      const [a, b] = [...fingers.values()];
      touched = true;
      camera.zoom(now / pinch, (a[0] + b[0]) / 2, (a[1] + b[1]) / 2);
      pinch = now;
      repaint();
      return;
    }
    if (dragging.move(event.offsetX, event.offsetY, event)) return;
    if (panning) {
      const dx = event.offsetX - panning.x;
      const dy = event.offsetY - panning.y;
      if (!panning.moved && Math.hypot(dx, dy) < 4) return;
      panning.moved = true;
      touched = true;
      camera.pan(dx, dy);
      panning.x = event.offsetX;
      panning.y = event.offsetY;
      repaint();
    }
  });
  canvas.addEventListener('pointerrawupdate', (event) => {
    if (fingers.size === 1 && fingers.has(event.pointerId)) dragging.move(event.offsetX, event.offsetY, event);
  });
  const up = (event) => {
    fingers.delete(event.pointerId);
    const dragged = dragging.end();
    if (panning && !panning.moved && !dragged && event.type === 'pointerup') {
      if (taker) taker.click(event.offsetX, event.offsetY, event);
      else if (panning.pin) put({ job: 'proof', finding: panning.pin.number });
      else select(panning.thing, 'table');
    }
    panning = null;
  };
  canvas.addEventListener('pointerup', up);
  canvas.addEventListener('pointercancel', up);
  canvas.addEventListener('pointerleave', () => { if (view.hover) { view.hover = null; repaint(); } });
  canvas.addEventListener('wheel', (event) => {
    event.preventDefault();
    touched = true;
    const lines = event.deltaMode === 1 ? 16 : 1;
    if (event.shiftKey) camera.pan(-(event.deltaX || event.deltaY) * lines, 0);
    else camera.zoom(Math.exp(-event.deltaY * lines * 0.0016), event.offsetX, event.offsetY);
    repaint();
  }, { passive: false });
  canvas.addEventListener('dblclick', () => { if (!taker) showAll(); });
}

function spread(fingers) {
  const [a, b] = [...fingers.values()];
  return Math.max(1, Math.hypot(a[0] - b[0], a[1] - b[1]));
}

function keys() {
  canvas.addEventListener('keydown', (event) => {
    if (taker && !event.ctrlKey && !event.metaKey && taker.key(event)) {
      event.preventDefault();
      event.stopPropagation();
      return;
    }
    if (!taker && !event.ctrlKey && !event.metaKey && nudgeKey(event)) {
      event.preventDefault();
      event.stopPropagation();
      return;
    }
    const step = event.shiftKey ? 160 : 40;
    const acts = {
      ArrowLeft: () => camera.pan(step, 0), ArrowRight: () => camera.pan(-step, 0),
      ArrowUp: () => camera.pan(0, step), ArrowDown: () => camera.pan(0, -step),
      '+': () => camera.zoom(1.25, view.width / 2, view.height / 2),
      '=': () => camera.zoom(1.25, view.width / 2, view.height / 2),
      '-': () => camera.zoom(0.8, view.width / 2, view.height / 2),
      0: showAll,
      Escape: () => select(null),
    };
    const act = acts[event.key];
    if (!act || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    touched = event.key !== '0' && (touched || event.key !== 'Escape');
    act();
    repaint();
  });
}
