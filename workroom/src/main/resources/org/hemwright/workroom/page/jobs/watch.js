// A laying seen to improve: each shorter one as it is found, its pieces gliding, its length falling along a line.
import { draw, fill, make, set } from '../dom.js';
import { CLOTH } from '../words/cloth.js';
import { clothOf, pieceOf, placed } from './laid.js';

let svg = null;
let groups = new Map();
let lengths = [];
let key = '';
let longest = 0;

/** Forgets what was seen. */
export function lookAway() {
  svg = null;
  groups = new Map();
  lengths = [];
  key = '';
}

/**
 * Shows a laying in a place. Layings of one cloth, said by the same `cloth`, are seen to become one another.
 *
 * told: as the board is told of it; words: what stands below it
 */
export function look(place, cloth, told, words) {
  if (cloth !== key || !svg || told.long > longest) {
    if (cloth !== key) lengths = [];
    key = cloth;
    longest = told.long;
    svg = clothOf(told, 0, CLOTH.seen);
    svg.classList.add('watched');
    svg.setAttribute('role', 'img');
    groups = new Map();
  }
  lengths.push(told.taken);
  const end = svg.querySelector('.board-end');
  end.setAttribute('x1', told.long);
  end.setAttribute('x2', told.long);
  const seen = new Set();
  for (const piece of told.pieces) {
    const name = `${piece.item} ${piece.copy}`;
    seen.add(name);
    let group = groups.get(name);
    if (!group) {
      group = pieceOf(piece);
      groups.set(name, group);
      svg.append(group);
    } else {
      const anew = pieceOf(piece);
      group.replaceChildren(...anew.childNodes);
    }
    placed(group, told, piece);
  }
  for (const [name, group] of groups) {
    if (seen.has(name)) continue;
    group.remove();
    groups.delete(name);
  }
  fill(place, svg, make('div', { class: 'watched-words' }, make('p', {}, set(words)), lengths.length > 1 ? fall() : null));
}

/** The lengths so far, from the first to the last. */
function fall() {
  const [wide, high] = [180, 34];
  const least = Math.min(...lengths);
  const most = Math.max(...lengths);
  const x = (at) => 3 + (at * (wide - 8)) / (lengths.length - 1);
  const y = (length) => 4 + ((most - length) * (high - 8)) / Math.max(1, most - least);
  const points = lengths.map((length, at) => `${x(at).toFixed(1)},${y(length).toFixed(1)}`).join(' ');
  return draw('svg', { class: 'fall', viewBox: `0 0 ${wide} ${high}`, role: 'img', 'aria-label': CLOTH.fall(lengths.length, most - least) },
      draw('polyline', { points }), draw('circle', { cx: x(lengths.length - 1), cy: y(lengths[lengths.length - 1]), r: 3.2 }));
}
