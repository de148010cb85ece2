// Pointing at places in a photograph: by a click, or by a cross that the keys move.
import { draw, make } from '../dom.js';
import { PHOTOGRAPH } from '../words/bring.js';
import { perPixel } from './picture.js';

/** A picture to point at, in its own pixels; `told` is called after each place. */
export function pointing(picture, width, height, told) {
  let wanted = 4;
  const places = [];
  const cross = { x: width / 2, y: height / 2 };
  const over = draw('g');
  const svg = draw('svg', { class: 'bring-picture photo', viewBox: `0 0 ${width} ${height}`, tabindex: 0, role: 'application', 'aria-label': PHOTOGRAPH.raw },
      draw('image', { href: `data:image/jpeg;base64,${picture}`, width, height, preserveAspectRatio: 'none' }), over);
  const paint = () => {
    const unit = perPixel(svg);
    const arm = 11 * unit;
    over.replaceChildren(...places.flatMap(([x, y], index) => [
      draw('path', { class: 'photo-cross', d: `M${x - arm} ${y}H${x + arm}M${x} ${y - arm}V${y + arm}` }),
      draw('text', { class: 'photo-number', x: x + arm, y: y - arm / 2, 'font-size': 15 * unit, 'stroke-width': 4 * unit }, String(index + 1)),
    ]), draw('path', { class: 'photo-cross moving', d: `M${cross.x - 2 * arm} ${cross.y}H${cross.x + 2 * arm}M${cross.x} ${cross.y - 2 * arm}V${cross.y + 2 * arm}` }));
  };
  const point = (x, y) => {
    if (places.length >= wanted) return;
    places.push([x, y]);
    paint();
    told();
  };
  svg.addEventListener('click', (event) => {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    Object.assign(cross, { x: at.x, y: at.y });
    point(at.x, at.y);
  });
  const steps = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  svg.addEventListener('keydown', (event) => {
    if (steps[event.key]) {
      event.preventDefault();
      const far = event.shiftKey ? 1 : Math.max(width, height) / 60;
      cross.x = Math.min(width, Math.max(0, cross.x + steps[event.key][0] * far));
      cross.y = Math.min(height, Math.max(0, cross.y + steps[event.key][1] * far));
      paint();
    } else if (event.key === 'Enter') {
      point(cross.x, cross.y);
    }
  });
  requestAnimationFrame(paint);
  return { look: make('div', { class: 'photo-look' }, svg), places, wants: (count) => { wanted = count; } };
}
