// An outline over the straightened photograph, to be corrected by hand: points, handles, notches, grain.
import { draw, make } from '../dom.js';
import { PHOTOGRAPH } from '../words/bring.js';
import { perPixel } from './picture.js';

/** A notch is drawn this long (mm). */
const NOTCH = 5;

/**
 * The picture in millimetres, y upward, and the outline over it as joints `{x, y, before, after}`: handles are places or null;
 * two joints whose facing handles are null have a straight line between them. `told` is called after each change.
 */
export function correcting(picture, box, piece, told) {
  const [x0, y0, x1, y1] = box;
  let state = { joints: joints(piece), notches: [], grain: null };
  let tool = 'move';
  let chosen = -1;
  let first = null;
  const past = [];

  const lines = draw('g', { transform: 'scale(1 -1)' });
  const points = draw('g');
  const svg = draw('svg', { class: 'bring-picture photo', viewBox: `${x0} ${-y1} ${x1 - x0} ${y1 - y0}`, role: 'group', 'aria-label': PHOTOGRAPH.straight(state.joints.length) },
      draw('image', { href: `data:image/jpeg;base64,${picture}`, x: x0, y: -y1, width: x1 - x0, height: y1 - y0, preserveAspectRatio: 'none' }), lines, points);

  const keep = () => past.push(structuredClone(state));
  const done = () => { paint(); told(); };

  function paint() {
    const unit = perPixel(svg);
    const shape = draw('path', { d: pathOf(state.joints), class: 'photo-outline' });
    lines.replaceChildren(draw('path', { d: pathOf(state.joints), class: 'photo-outline under' }), shape,
        ...state.notches.map(([ax, ay, bx, by]) => draw('path', { d: `M${ax} ${ay}L${bx} ${by}`, class: 'photo-notch' })),
        ...(state.grain ? [draw('path', { d: `M${state.grain[0]} ${state.grain[1]}L${state.grain[2]} ${state.grain[3]}`, class: 'photo-grain' })] : []));
    const parts = [];
    state.joints.forEach((joint, index) => {
      if (index !== chosen) return;
      for (const side of ['before', 'after']) {
        const handle = joint[side];
        if (!handle) continue;
        parts.push(draw('path', { d: `M${joint.x} ${-joint.y}L${handle.x} ${-handle.y}`, class: 'photo-arm' }),
            knob(handle, 4.5 * unit, 'photo-handle', PHOTOGRAPH.handle(index + 1, PHOTOGRAPH.ways[side === 'before' ? 0 : 1]), (dx, dy) => { handle.x += dx; handle.y += dy; }, `${index}-${side}`));
      }
    });
    state.joints.forEach((joint, index) => parts.push(knob(joint, 6 * unit, `photo-joint${index === chosen ? ' chosen' : ''}`, PHOTOGRAPH.joint(index + 1, state.joints.length), (dx, dy) => {
      for (const at of [joint, joint.before, joint.after]) if (at) { at.x += dx; at.y += dy; }
    }, `${index}`, index)));
    const focused = document.activeElement?.dataset?.knob;
    points.replaceChildren(...parts);
    if (focused !== undefined) points.querySelector(`[data-knob="${focused}"]`)?.focus();
    svg.classList.toggle('placing', tool !== 'move');
  }

  function knob(at, radius, kind, label, move, key, joint = -1) {
    const circle = draw('circle', { cx: at.x, cy: -at.y, r: radius, class: kind, tabindex: 0, role: 'button', 'aria-label': label, 'data-knob': key });
    circle.addEventListener('pointerdown', (event) => {
      if (tool !== 'move') return;
      event.preventDefault();
      keep();
      if (joint >= 0) chosen = joint;
      let last = place(event);
      const drag = (next) => {
        const now = place(next);
        move(now.x - last.x, now.y - last.y);
        last = now;
        paint();
      };
      const drop = () => {
        window.removeEventListener('pointermove', drag);
        done();
      };
      window.addEventListener('pointermove', drag);
      window.addEventListener('pointerup', drop, { once: true });
      paint();
      points.querySelector(`[data-knob="${key}"]`)?.focus();
    });
    circle.addEventListener('focus', () => {
      if (joint >= 0 && chosen !== joint) {
        chosen = joint;
        paint();
      }
    });
    circle.addEventListener('keydown', (event) => {
      const steps = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
      if (steps[event.key]) {
        event.preventDefault();
        keep();
        const far = event.shiftKey ? 0.1 : 1;
        move(steps[event.key][0] * far, steps[event.key][1] * far);
        done();
      } else if ((event.key === 'Delete' || event.key === 'Backspace') && joint >= 0 && state.joints.length > 3) {
        event.preventDefault();
        keep();
        state.joints.splice(joint, 1);
        chosen = -1;
        done();
      } else if (event.key === 'Enter' && tool !== 'move') {
        placed(at);
      }
    });
    return circle;
  }

  const place = (event) => {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    return { x: at.x, y: -at.y };
  };

  svg.addEventListener('click', (event) => { if (tool !== 'move') placed(place(event)); });

  function placed(at) {
    if (tool === 'grain') {
      if (!first) {
        first = at;
        return;
      }
      keep();
      state.grain = [first.x, first.y, at.x, at.y];
      first = null;
    } else {
      const near = nearest(state.joints, at);
      keep();
      if (tool === 'add') chosen = split(state.joints, near.joint, near.t);
      else state.notches.push([near.x, near.y, near.x + NOTCH * near.inX, near.y + NOTCH * near.inY]);
    }
    tool = 'move';
    done();
  }

  requestAnimationFrame(paint);
  return {
    look: make('div', { class: 'photo-look' }, svg),
    tool: () => tool,
    take: (name) => { tool = name; first = null; paint(); },
    notches: () => state.notches,
    grain: () => state.grain,
    changed: () => past.length > 0,
    back: () => { state = past.pop(); chosen = -1; done(); },
    outline: () => ({
      start: [state.joints[0].x, state.joints[0].y],
      curves: state.joints.map((joint, index) => {
        const next = state.joints[(index + 1) % state.joints.length];
        const bent = joint.after || next.before;
        return bent ? [...xy(joint.after ?? joint), ...xy(next.before ?? next), next.x, next.y] : [next.x, next.y];
      }),
    }),
  };
}

const xy = (at) => [at.x, at.y];

function joints(piece) {
  const all = piece.curves.map((curve) => ({ x: curve.at(-2), y: curve.at(-1), before: curve.length === 6 ? { x: curve[2], y: curve[3] } : null, after: null }));
  piece.curves.forEach((curve, index) => {
    if (curve.length === 6) all[(index + all.length - 1) % all.length].after = { x: curve[0], y: curve[1] };
  });
  return all;
}

function pathOf(joints) {
  const parts = [`M${joints[0].x} ${joints[0].y}`];
  joints.forEach((joint, index) => {
    const next = joints[(index + 1) % joints.length];
    const one = joint.after ?? joint;
    const two = next.before ?? next;
    parts.push(joint.after || next.before ? `C${one.x} ${one.y} ${two.x} ${two.y} ${next.x} ${next.y}` : `L${next.x} ${next.y}`);
  });
  return `${parts.join('')}Z`;
}

const mix = (a, b, t) => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });

/** The four places that a curve hangs on. */
function hung(joints, index) {
  const from = joints[index];
  const to = joints[(index + 1) % joints.length];
  const straight = !from.after && !to.before;
  return straight ? [from, mix(from, to, 1 / 3), mix(from, to, 2 / 3), to] : [from, from.after ?? from, to.before ?? to, to];
}

/** The place on the outline that is nearest, and the unit step inward from it. */
function nearest(joints, at) {
  let best = { off: Infinity };
  joints.forEach((joint, index) => {
    const [a, b, c, d] = hung(joints, index);
    for (let k = 0; k <= 200; k += 1) {
      const t = k / 200;
      const p = mix(mix(a, b, t), mix(b, c, t), t);
      const q = mix(mix(b, c, t), mix(c, d, t), t);
      const on = mix(p, q, t);
      const off = Math.hypot(on.x - at.x, on.y - at.y);
      if (off < best.off) {
        const long = Math.hypot(q.x - p.x, q.y - p.y) || 1;
        // Edges run counter-clockwise, so that inward is to the left.
        best = { off, joint: index, t, x: on.x, y: on.y, inX: -(q.y - p.y) / long, inY: (q.x - p.x) / long };
      }
    }
  });
  return best;
}

/** Puts a joint into a curve without bending it; answers which it is. */
function split(joints, index, t) {
  const from = joints[index];
  const to = joints[(index + 1) % joints.length];
  const [a, b, c, d] = hung(joints, index);
  const straight = !from.after && !to.before;
  const ab = mix(a, b, t);
  const bc = mix(b, c, t);
  const cd = mix(c, d, t);
  const p = mix(ab, bc, t);
  const q = mix(bc, cd, t);
  const made = { ...mix(p, q, t), before: straight ? null : p, after: straight ? null : q };
  if (!straight) {
    from.after = ab;
    to.before = cd;
  }
  joints.splice(index + 1, 0, made);
  return index + 1;
}
