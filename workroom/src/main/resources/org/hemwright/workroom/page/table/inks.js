// The inks of the table, read once from the style sheet for the theme that is on.

let known = null;
matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => { known = null; });

/** The inks by name. */
export function inks() {
  if (!known) {
    const style = getComputedStyle(document.documentElement);
    const of = (name) => style.getPropertyValue(`--${name}`).trim();
    known = {
      paper: of('paper'), sheet: of('sheet'), lift: of('lift'), ink: of('ink'), soft: of('ink-soft'),
      rule: of('rule'), strong: of('rule-strong'), chalk: of('chalk'), wash: of('chalk-wash'), rust: of('rust'),
      red: of('red'), green: of('green'), brass: of('brass'), piece: of('piece'), lit: of('piece-lit'),
      dark: matchMedia('(prefers-color-scheme: dark)').matches,
    };
  }
  return known;
}

/** A size's ink, light enough on slate and dark enough on paper. */
export function sizeInk(hex) {
  if (!inks().dark) return hex;
  const value = parseInt(hex.slice(1), 16);
  const mix = (shift) => Math.round(((value >> shift) & 255) * 0.45 + 255 * 0.55);
  return `rgb(${mix(16)} ${mix(8)} ${mix(0)})`;
}
