// A drawing as it was read, and over it the piece that is recognised.
import { draw } from '../dom.js';

/** The frame of a picture of this box (millimetres, y upward), to be filled by `paint`. */
export function frame(box, label) {
  const [x0, y0, x1, y1] = box;
  const margin = Math.max(x1 - x0, y1 - y0, 1) * 0.06;
  const view = [x0 - margin, -y1 - margin, x1 - x0 + 2 * margin, y1 - y0 + 2 * margin];
  return draw('svg', { class: 'bring-picture', viewBox: view.map((each) => each.toFixed(2)).join(' '), role: 'img', 'aria-label': label });
}

/** A group in which y runs upward. */
export function upright(...children) {
  return draw('g', { transform: 'scale(1 -1)' }, ...children);
}

/** A line. */
export function line(d, kind) {
  return draw('path', { d, class: kind });
}

/** How many millimetres a screen's pixel is in a picture. */
export function perPixel(svg) {
  const [, , width, height] = svg.getAttribute('viewBox').split(' ').map(Number);
  const wide = svg.clientWidth || 400;
  const high = svg.clientHeight || 400;
  return Math.max(width / wide, height / high);
}

/** A number at a corner. */
export function numbered(at, words, unit) {
  const group = draw('g', { class: 'corner-number' },
      draw('circle', { cx: at.x, cy: -at.y, r: 9 * unit }),
      draw('text', { x: at.x, y: -at.y + 4.2 * unit, 'font-size': 12 * unit }, String(words)));
  return group;
}

/** A name beside a line. */
export function named(at, words, unit) {
  return draw('text', { class: 'edge-name', x: at.x, y: -at.y, 'font-size': 12.5 * unit, 'stroke-width': 3.5 * unit }, words);
}

/** A dot. */
export function dot(at, kind, unit) {
  return draw('circle', { class: kind, cx: at.x, cy: -at.y, r: 3.6 * unit });
}
