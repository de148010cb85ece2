// What stands on a piece to be read or taken: its name, its edges' names, its points.
import { broken, leave, onScreen, SANS, shownName, words } from './canvas.js';
import { middle } from './pieces.js';

/** Number and title in the middle of the piece, where there is room; its edges' names if it is selected. */
export function paintName(context, view, ink, drawn, place) {
  const n = drawn.numbers;
  const wide = (n[4] - n[2]) * view.camera.scale;
  if (wide < 34) return;
  const [x, y] = onScreen(view, place, drawn, (n[2] + n[4]) / 2, (n[3] + n[5]) / 2);
  leave(context, view);
  context.textAlign = 'center';
  context.font = `600 14px ${SANS}`;
  const lines = broken(context, drawn.structure.title, Math.max(60, wide * 0.8));
  let down = y - 9 * lines.length;
  context.lineJoin = 'round';
  const ground = view.selected?.piece === drawn.structure.piece ? ink.lit : ink.piece;
  for (const line of [String(drawn.structure.number), ...lines]) {
    words(context, line, x, down, { colour: ink.ink, ground, wide: 4 });
    context.font = `13.5px ${SANS}`;
    down += 17;
  }
  context.textAlign = 'left';
  if (view.selected?.piece === drawn.structure.piece) nameEdges(context, view, ink, drawn, place);
}

function nameEdges(context, view, ink, drawn, place) {
  context.font = `12.5px ${SANS}`;
  context.textAlign = 'center';
  const taken = [];
  for (const edge of drawn.parts('edge')) {
    const [x, y] = onScreen(view, place, drawn, ...middle(drawn, edge));
    const name = shownName(edge.name);
    const half = context.measureText(name).width / 2 + 4;
    if (taken.some(([a, b, c]) => Math.abs(a - x) < c + half && Math.abs(b - y) < 16)) continue;
    taken.push([x, y, half]);
    const colour = view.selected?.name === edge.name && view.selected.kind === 'edge' ? ink.chalk : ink.soft;
    words(context, name, x, y - 6, { colour, ground: ink.sheet, wide: 5 });
  }
  context.textAlign = 'left';
}

/** Its points and notches, as they are taken hold of. */
export function paintPoints(context, view, ink, piece, drawn, place) {
  leave(context, view);
  const selected = view.selected;
  const hover = view.hover;
  for (const kind of ['point', 'notch']) {
    for (const part of drawn.parts(kind)) {
      const [x, y] = onScreen(view, place, drawn, drawn.numbers[part.at], drawn.numbers[part.at + 1]);
      const is = (thing) => thing?.kind === kind && thing.name === part.name && thing.piece === piece;
      const big = is(selected) || is(hover);
      context.beginPath();
      if (kind === 'point') context.arc(x, y, big ? 6 : 3.4, 0, 2 * Math.PI);
      else context.rect(x - (big ? 5 : 3), y - (big ? 5 : 3), big ? 10 : 6, big ? 10 : 6);
      context.fillStyle = is(selected) ? ink.chalk : ink.lift;
      context.fill();
      context.strokeStyle = big ? ink.chalk : ink.soft;
      context.lineWidth = big ? 2 : 1.2;
      context.stroke();
      if (kind === 'point' && big) {
        context.font = `13px ${SANS}`;
        words(context, shownName(part.name), x + 10, y - 8, { colour: ink.chalk, ground: ink.sheet, wide: 5 });
      }
    }
  }
}
