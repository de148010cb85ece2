// A small plot of one measure over the sizes: enough to see a step that is out of line.
import { draw } from '../dom.js';

const WIDE = 340;
const HIGH = 46;

/** Dots over the sizes, the present one filled. */
export function sizePlot(numbers, size, label) {
  const known = numbers.filter((each) => each !== null);
  const plot = draw('svg', { viewBox: `0 0 ${WIDE} ${HIGH}`, class: 'size-plot', role: 'img', 'aria-label': `${label}, by size` });
  if (known.length === 0) return plot;
  const least = Math.min(...known);
  const most = Math.max(...known);
  const x = (index) => 6 + (index / Math.max(1, numbers.length - 1)) * (WIDE - 12);
  const y = (value) => (most - least < 0.005 ? HIGH / 2 : HIGH - 7 - ((value - least) / (most - least)) * (HIGH - 14));
  plot.append(draw('path', { class: 'size-line', d: numbers.reduce((path, value, index) =>
    value === null ? path : `${path}${path === '' || numbers[index - 1] === null ? 'M' : 'L'}${x(index).toFixed(1)} ${y(value).toFixed(1)}`, '') }));
  numbers.forEach((value, index) => {
    if (value !== null) plot.append(draw('circle', { class: index === size ? 'now' : 'other', cx: x(index).toFixed(1), cy: y(value).toFixed(1), r: index === size ? 4.5 : 2.4 }));
  });
  return plot;
}
