// Dragging what is selected: the server says which of her numbers change, and shows what comes of it. The sentence
// that will be written stands below the table, with the ways among which she may choose.
import { fill, make } from '../dom.js';
import { ask } from '../line.js';
import { get, select } from '../state.js';
import { DRAG } from '../words/drag.js';
import { drawing, take } from './pieces.js';
import { snapped } from './snap.js';

const FAR_ENOUGH = 4;

/** Begins, moves and ends a drag; `move` and `end` say whether the pointer was theirs. */
export function startDragging(view, repaint, paintNow) {
  let drag = null;

  function begin(thing, px, py) {
    drag = null;
    const held = get('selected');
    const same = held && held.kind === thing.kind && held.piece === thing.piece && held.name === thing.name;
    if (!handle(thing) && !(same && (thing.kind === 'edge' || thing.kind === 'path'))) return;
    const drawn = drawing(thing.piece, view.size);
    const place = view.places.get(thing.piece);
    if (!drawn || !place) return;
    drag = { thing, drawn, place: [place[0] - drawn.stackX, place[1] - drawn.stackY], px, py, started: false, way: 0, ways: null };
  }

  /** The pointer in the piece's own millimetres. */
  function own(px, py) {
    const [x, y] = view.camera.toTable(px, py);
    return [x - drag.place[0], y - drag.place[1]];
  }

  async function start() {
    const { thing } = drag;
    const mine = drag;
    mine.started = true;
    select(thing, 'table');
    const [x, y] = own(mine.px, mine.py);
    mine.grab = [x, y];
    const answer = await ask('hold', {
      kind: thing.kind, piece: thing.piece, name: thing.name, size: view.size, share: handle(thing) ? 0 : nearestShare(mine, x, y),
    });
    if (drag !== mine) return;
    mine.ways = answer.ways;
    mine.from = [answer.x, answer.y];
    if (answer.ways.length === 0) tellNone();
    else follow();
  }

  function follow() {
    if (!drag?.ways?.length || drag.asking || drag.unseen || !drag.goal) return;
    const mine = drag;
    const goal = mine.goal;
    const since = mine.since;
    mine.goal = null;
    mine.since = 0;
    mine.asking = true;
    const [from, to] = [view.sizes[0], view.sizes[view.sizes.length - 1]];
    ask('drag', { way: mine.way, x: goal[0], y: goal[1], size: view.size, from, to }).then((answer) => {
      mine.asking = false;
      take(answer);
      if (drag !== mine) return;
      mine.moved = true;
      const off = Math.max(Math.abs(answer.x - goal[0]), Math.abs(answer.y - goal[1]));
      view.guides = off * view.camera.scale < 3 ? mine.guides : [];
      tellSentence(answer.text);
      paintNow();
      view.followed?.(since);
      // What is drawn is shown with the next frame: until then there is nothing more to be seen.
      mine.unseen = true;
      requestAnimationFrame(() => { mine.unseen = false; follow(); });
    }, () => { mine.asking = false; });
  }

  /** Raw moves come at once, the others with the frame: where there are raw ones, these are heard. */
  function move(px, py, event) {
    if (!drag) return false;
    if (event?.type === 'pointerrawupdate') drag.raw = true;
    else if (drag.raw && event?.type === 'pointermove') return true;
    if (!drag.started) {
      if (Math.hypot(px - drag.px, py - drag.py) < FAR_ENOUGH) return true;
      start().catch(() => {});
    }
    const [x, y] = own(px, py);
    const start0 = drag.from ?? drag.grab;
    let goal = [start0[0] + x - drag.grab[0], start0[1] + y - drag.grab[1]];
    if (event?.shiftKey) goal = Math.abs(goal[0] - start0[0]) > Math.abs(goal[1] - start0[1]) ? [goal[0], start0[1]] : [start0[0], goal[1]];
    const snap = snapped(goal, drag, view, event?.altKey);
    drag.guides = snap.guides.map((guide) => ({ ...guide, place: drag.place }));
    drag.goal = snap.goal;
    drag.since ||= event?.timeStamp ?? 0;
    drag.lastGoal = snap.goal;
    follow();
    return true;
  }

  function end(keep = true) {
    if (!drag) return false;
    const mine = drag;
    view.guides = [];
    if (!keep) mine.goal = null;
    if (!mine.started) {
      drag = null;
      return false;
    }
    if (!mine.ways?.length || !mine.moved) {
      drag = null;
      hide();
      ask('drop', { keep: false }).catch(() => {});
      return true;
    }
    // What the pointer did last is asked before it is let go.
    const finish = () => {
      if (mine.asking || mine.goal) {
        setTimeout(finish, 8);
        return;
      }
      drag = null;
      ask('drop', { keep }).catch(() => {});
      hide();
      repaint();
    };
    finish();
    return true;
  }

  function tellSentence(text) {
    const place = document.getElementById('sentence');
    const mine = drag;
    if (mine.told !== mine.way) {
      mine.told = mine.way;
      mine.line = make('p', { class: 'sentence-line' });
      const ways = mine.ways.length < 2 ? null : make('div', { class: 'ways', role: 'radiogroup', 'aria-label': DRAG.ways },
          ...mine.ways.map((way, index) => make('button', {
            type: 'button', role: 'radio', 'aria-checked': index === mine.way ? 'true' : 'false',
          }, `${index + 1}  ${DRAG.way(way)}`)));
      fill(place, mine.line, ways);
      place.hidden = false;
    }
    if (mine.line.textContent !== text) mine.line.textContent = text;
  }

  function tellNone() {
    const place = document.getElementById('sentence');
    place.hidden = false;
    fill(place, make('p', {}, DRAG.none));
  }

  function hide() {
    document.getElementById('sentence').hidden = true;
  }

  // While something is held, a figure chooses another way to write it, and Escape lays it back.
  document.addEventListener('keydown', (event) => {
    if (!drag?.started) return;
    const way = Number(event.key) - 1;
    if (event.key === 'Escape') {
      event.preventDefault();
      const mine = drag;
      end(false);
      if (drag === mine) drag = null;
    } else if (drag.ways && way >= 0 && way < drag.ways.length) {
      event.preventDefault();
      drag.way = way;
      drag.goal = drag.lastGoal;
      follow();
    }
  }, true);

  return { begin, move, end: () => end(true), cancel: () => end(false) };
}

/** Whether a thing is held by itself, rather than by a place along it. */
function handle(thing) {
  return thing.kind === 'point' || thing.kind === 'notch';
}

/** How far along the edge the grabbed place lies, near enough: by its curves' ends. */
function nearestShare(mine, x, y) {
  const part = mine.drawn.part(mine.thing.kind, mine.thing.name);
  const n = mine.drawn.numbers;
  let best = Infinity;
  let share = 0.5;
  let from = [n[part.at], n[part.at + 1]];
  for (let i = 0, at = part.at + 2; i < part.curves; i++, at += 6) {
    const to = [n[at + 4], n[at + 5]];
    for (let step = 0; step <= 16; step++) {
      const t = step / 16;
      const p = Number.isNaN(n[at]) ? [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t]
        : [0, 1].map((k) => (1 - t) ** 3 * from[k] + 3 * (1 - t) ** 2 * t * n[at + k] + 3 * (1 - t) * t * t * n[at + 2 + k] + t ** 3 * to[k]);
      const far = Math.hypot(p[0] - x, p[1] - y);
      if (far < best) {
        best = far;
        share = (i + t) / part.curves;
      }
    }
    from = to;
  }
  return share;
}
