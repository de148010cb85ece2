// The tape: the size run as a tape measure. The slide is the size on the table; the two ends are pulled apart
// to see a span of sizes.
import { fill, make } from '../dom.js';
import { get, put, watch } from '../state.js';
import { TAPE } from '../words/table.js';

let track;

/** Starts the tape. */
export function startTape() {
  watch(['sizes', 'size', 'from', 'to'], lay);
}

function lay() {
  const holder = document.getElementById('tape');
  const sizes = get('sizes');
  const focus = document.activeElement?.dataset?.tape;
  if (sizes.length === 0) {
    fill(holder);
    return;
  }
  const last = Math.max(1, sizes.length - 1);
  const at = (index) => `${(index / last) * 100}%`;
  const [size, from, to] = [get('size'), get('from'), get('to')];
  track = make('div', { class: 'tape-track' });
  const blade = make('div', { class: 'tape-blade' });
  blade.addEventListener('pointerdown', (event) => pull(event, 'size'));
  const span = make('div', { class: 'tape-span' });
  span.style.left = at(from);
  span.style.width = `${((to - from) / last) * 100}%`;
  track.append(blade, span);
  sizes.forEach((name, index) => {
    const tick = make('div', { class: 'tape-tick', 'aria-hidden': 'true' }, make('i'), make('b', {}, name));
    tick.classList.toggle('shown', index >= from && index <= to);
    tick.classList.toggle('current', index === size);
    tick.classList.toggle('base', index === get('base'));
    tick.classList.toggle('sparse', sizes.length > 15 && index % 2 === 1 && index !== size);
    tick.style.left = at(index);
    track.append(tick);
  });
  track.append(
      slider('from', TAPE.from, from, 0, size), slider('to', TAPE.to, to, size, sizes.length - 1),
      slider('size', TAPE.size, size, 0, sizes.length - 1));
  const whole = from === 0 && to === sizes.length - 1 && sizes.length > 1;
  fill(holder, track, make('button', {
    type: 'button', class: 'tape-end', 'data-tape': 'nest',
    onclick: () => put(whole ? { from: size, to: size } : { from: 0, to: sizes.length - 1 }),
  }, whole ? TAPE.one : TAPE.nest));
  if (focus) holder.querySelector(`[data-tape="${focus}"]`)?.focus();
}

function slider(name, label, value, least, most) {
  const sizes = get('sizes');
  const thumb = make('div', {
    class: `tape-${name === 'size' ? 'slide' : 'stop'} ${name}`, role: 'slider', tabindex: 0, 'data-tape': name,
    'aria-label': label, 'aria-valuemin': least, 'aria-valuemax': most, 'aria-valuenow': value,
    'aria-valuetext': sizes[value],
  }, name === 'size' ? make('span', {}, sizes[value]) : null);
  thumb.style.left = `${(value / Math.max(1, sizes.length - 1)) * 100}%`;
  thumb.addEventListener('pointerdown', (event) => { event.stopPropagation(); pull(event, name); });
  thumb.addEventListener('keydown', (event) => {
    const steps = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -5, PageUp: 5 };
    if (event.key in steps) set(name, get(name) + steps[event.key]);
    else if (event.key === 'Home') set(name, 0);
    else if (event.key === 'End') set(name, sizes.length - 1);
    else return;
    event.preventDefault();
  });
  return thumb;
}

function set(name, wanted) {
  const last = get('sizes').length - 1;
  const value = Math.max(0, Math.min(last, wanted));
  if (name === 'size') {
    const single = get('from') === get('to');
    put({
      size: value,
      from: single ? value : Math.min(get('from'), value),
      to: single ? value : Math.max(get('to'), value),
    });
  } else if (name === 'from') {
    put({ from: Math.min(value, get('size')) });
  } else {
    put({ to: Math.max(value, get('size')) });
  }
}

function pull(down, name) {
  down.preventDefault();
  const box = track.getBoundingClientRect();
  const last = get('sizes').length - 1;
  const follow = (event) => set(name, Math.round(((event.clientX - box.left) / box.width) * last));
  const stop = () => {
    window.removeEventListener('pointermove', follow);
    window.removeEventListener('pointerup', stop);
    document.querySelector(`[data-tape="${name}"]`)?.focus();
  };
  window.addEventListener('pointermove', follow);
  window.addEventListener('pointerup', stop);
  follow(down);
}
