// How the table is looked at: how large, and from where.

const LEAST = 0.02;
const MOST = 40;

/** Millimetres to pixels of the canvas, y turned over. */
export class Camera {
  constructor() {
    this.scale = 0.5;
    this.x = 0;
    this.y = 0;
  }

  toScreen(x, y) {
    return [(x - this.x) * this.scale, (this.y - y) * this.scale];
  }

  toTable(px, py) {
    return [px / this.scale + this.x, this.y - py / this.scale];
  }

  /** Looks at a box, all of it, in a canvas of a size, with a margin for the rulers. */
  fit(box, width, height, margin) {
    const across = Math.max(1, box[2] - box[0]);
    const up = Math.max(1, box[3] - box[1]);
    const clear = [width - margin.left - margin.right, height - margin.top - margin.bottom];
    this.scale = clamp(Math.min(clear[0] / across, clear[1] / up));
    this.x = (box[0] + box[2]) / 2 - (margin.left + clear[0] / 2) / this.scale;
    this.y = (box[1] + box[3]) / 2 + (margin.top + clear[1] / 2) / this.scale;
  }

  /** Comes closer or goes farther, so that what lies under a place of the canvas stays there. */
  zoom(factor, px, py) {
    const [x, y] = this.toTable(px, py);
    this.scale = clamp(this.scale * factor);
    this.x = x - px / this.scale;
    this.y = y + py / this.scale;
  }

  pan(dx, dy) {
    this.x -= dx / this.scale;
    this.y += dy / this.scale;
  }
}

function clamp(scale) {
  return Math.max(LEAST, Math.min(MOST, scale));
}
