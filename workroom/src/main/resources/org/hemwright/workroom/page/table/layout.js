// Where each piece lies on the table: side by side on shelves, room kept for every size, so that nothing
// moves when another size is looked at.
import { names, reach } from './pieces.js';

const GAP = 55;

/** From piece to where its stack point lies (mm, y up), and the box round all of them. */
export function layOut(shape) {
  const boxes = names().map((name) => ({ name, box: reach(name) })).filter((each) => each.box[0] < each.box[2]);
  const places = new Map();
  if (boxes.length === 0) return { places, box: [0, 0, 1, 1] };
  const area = boxes.reduce((sum, { box }) => sum + (box[2] - box[0] + GAP) * (box[3] - box[1] + GAP), 0);
  const widest = Math.max(...boxes.map(({ box }) => box[2] - box[0]));
  const room = Math.max(widest, Math.sqrt(area * shape) * 1.08);
  let x = 0;
  let y = 0;
  let shelf = 0;
  let right = 0;
  for (const { name, box } of boxes) {
    const width = box[2] - box[0];
    const height = box[3] - box[1];
    if (x > 0 && x + width > room) {
      x = 0;
      y -= shelf + GAP;
      shelf = 0;
    }
    places.set(name, [x - box[0], y - box[3]]);
    x += width + GAP;
    right = Math.max(right, x - GAP);
    shelf = Math.max(shelf, height);
  }
  return { places, box: [0, y - shelf, right, 0] };
}
