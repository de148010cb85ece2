// Snapping: a dragged point lines up with the other points of its piece where it comes near; Alt leaves it free.

const NEAR = 6;

/** The goal, lined up where it is near, and the guides to be drawn. */
export function snapped(goal, drag, view, free) {
  if (free || drag.thing.kind !== 'point') return { goal, guides: [] };
  const near = NEAR / view.camera.scale;
  const n = drag.drawn.numbers;
  let bestX = null;
  let bestY = null;
  for (const part of drag.drawn.parts('point')) {
    if (part.name === drag.thing.name) continue;
    const [x, y] = [n[part.at], n[part.at + 1]];
    const dx = Math.abs(x - goal[0]);
    const dy = Math.abs(y - goal[1]);
    if (dx < near && (!bestX || dx < bestX.far)) bestX = { far: dx, x, y };
    if (dy < near && (!bestY || dy < bestY.far)) bestY = { far: dy, x, y };
  }
  const at = [bestX ? bestX.x : goal[0], bestY ? bestY.y : goal[1]];
  const guides = [];
  if (bestX) guides.push({ from: [bestX.x, bestX.y], to: at });
  if (bestY) guides.push({ from: [bestY.x, bestY.y], to: at });
  return { goal: at, guides };
}
