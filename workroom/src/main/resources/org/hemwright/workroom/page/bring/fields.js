// Small fields that the pages of bringing in share.
import { make } from '../dom.js';

let numbers = 0;

/** A label with its field below it. */
export function field(label, input, hint = '') {
  numbers += 1;
  input.id = `brought-${numbers}`;
  return make('div', { class: 'bring-field' }, make('label', { for: input.id }, label), input, hint ? make('p', { class: 'soft' }, hint) : null);
}

/** A field to type in. */
export function typed(value, change, attributes = {}) {
  const input = make('input', { type: 'text', autocomplete: 'off', spellcheck: 'false', value, ...attributes });
  input.addEventListener('input', () => change(input.value));
  return input;
}

/** A choice; options are [value, words], or {group, options}. */
export function choice(value, options, change, attributes = {}) {
  const option = ([each, words]) => {
    const made = make('option', { value: each }, words);
    made.selected = each === value;
    return made;
  };
  const input = make('select', attributes, ...options.map((each) => (each.group ? make('optgroup', { label: each.group }, ...each.options.map(option)) : option(each))));
  input.addEventListener('change', () => change(input.value));
  return input;
}

/** A box to tick. */
export function tick(label, on, change) {
  const input = make('input', { type: 'checkbox', onchange: () => change(input.checked) });
  input.checked = on;
  return make('label', { class: 'pick' }, input, make('span', {}, label));
}

/** Lines of a document, as they will be written. */
export function linesShown(lines) {
  return make('pre', { class: 'bring-lines', tabindex: 0 }, ...lines.map((line) => make('span', {}, `${line}\n`)));
}

/** What stands in the way, in words. */
export function troubles(problems, set) {
  return problems.map((each) => make('p', { class: `grid-problem ${each.status}` }, set(each.message), ' ', set(each.mend)));
}
