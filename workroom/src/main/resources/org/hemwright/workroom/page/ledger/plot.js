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

/** One column of the chart over its sizes, with the least and the most at its side. */
export function columnPlot(values, names, label) {
  const plot = draw('svg', { viewBox: '0 0 340 150', class: 'column-plot', role: 'img', 'aria-label': `${label}, by size` });
  const known = values.filter((each) => each !== null);
  const least = Math.min(...known);
  const most = Math.max(...known);
  const x = (index) => 40 + (index / Math.max(1, values.length - 1)) * 292;
  const y = (value) => (most === least ? 70 : 122 - ((value - least) / (most - least)) * 108);
  for (const value of new Set([least, most])) {
    plot.append(draw('line', { class: 'plot-rule', x1: 36, x2: 336, y1: y(value), y2: y(value) }), draw('text', { x: 32, y: y(value) + 4, class: 'plot-word end' }, String(value)));
  }
  plot.append(draw('path', { class: 'size-line', d: values.reduce((path, value, index) =>
    value === null ? path : `${path}${path === '' || values[index - 1] === null ? 'M' : 'L'}${x(index).toFixed(1)} ${y(value).toFixed(1)}`, '') }));
  values.forEach((value, index) => {
    if (value !== null) plot.append(draw('circle', { class: 'other', cx: x(index).toFixed(1), cy: y(value).toFixed(1), r: 2.6 }));
  });
  plot.append(draw('text', { x: 40, y: 145, class: 'plot-word' }, names[0] ?? ''), draw('text', { x: 332, y: 145, class: 'plot-word end' }, names[names.length - 1] ?? ''));
  return plot;
}
