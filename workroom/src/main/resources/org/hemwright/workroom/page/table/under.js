// Another size, a moment or a release laid on the drawing, stack point on stack point, in brass and dashed.
import { fill, make } from '../dom.js';
import { ask } from '../line.js';
import { get, watch } from '../state.js';
import { UNDER } from '../words/table.js';
import { enter } from './canvas.js';
import { drawing, drawingsOf, names } from './pieces.js';
import { paintOver, repaint } from './table.js';

let chosen = '';
let then = new Map();
let asked = 0;

/** The choice of what is laid on, to stand among the acts of the table. */
export function underlay() {
  const select = make('select', { 'aria-label': UNDER.label, id: 'underlay' });
  select.addEventListener('change', () => { chosen = select.value; fetchThen(); });
  select.addEventListener('pointerdown', () => offer(select));
  select.addEventListener('focus', () => offer(select));
  watch(['sizes'], () => offer(select));
  watch(['size'], fetchThen);
  paintOver(paint);
  return make('label', { class: 'toggle' }, UNDER.label, select);
}

async function offer(select) {
  const mine = ++asked;
  const versions = await ask('versions').catch(() => ({ moments: [], releases: [] }));
  if (mine !== asked) return;
  const option = (value, word) => make('option', { value }, word);
  const group = (label, options) => (options.length ? make('optgroup', { label }, ...options) : null);
  fill(select, option('', UNDER.nothing),
      group(UNDER.sizes, get('sizes').map((name, index) => option(`size ${index}`, UNDER.size(name)))),
      group(UNDER.moments, versions.moments.map(({ number, name }) => option(`moment ${number}`, name || UNDER.opened))),
      group(UNDER.releases, versions.releases.map((version) => option(`release ${version}`, UNDER.release(version)))));
  select.value = chosen;
  if (select.value !== chosen) { chosen = ''; select.value = ''; }
}

async function fetchThen() {
  then = new Map();
  repaint();
  const [kind, ...rest] = chosen.split(' ');
  const which = rest.join(' ');
  if (kind !== 'moment' && kind !== 'release') return;
  const mine = chosen;
  const size = get('sizes')[get('size')];
  const answer = await ask('version', { ...(kind === 'moment' ? { moment: Number(which) } : { release: which }), size }).catch(() => null);
  if (!answer || chosen !== mine || get('sizes')[get('size')] !== size) return;
  then = drawingsOf(answer);
  repaint();
}

function paint(context, view, ink) {
  if (!chosen) return;
  const px = 1 / view.camera.scale;
  for (const piece of names()) {
    const drawn = chosen.startsWith('size ') ? drawing(piece, Number(chosen.slice(5))) : then.get(piece);
    const place = view.places.get(piece);
    if (!drawn || !place) continue;
    enter(context, view, place, drawn);
    context.strokeStyle = ink.brass;
    context.lineWidth = 2 * px;
    context.setLineDash([7 * px, 4 * px]);
    const cut = drawn.parts('cut')[0];
    context.stroke(cut ? drawn.path(cut) : drawn.stitchLine());
    context.setLineDash([]);
  }
}
