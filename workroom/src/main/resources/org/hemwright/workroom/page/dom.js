// Makes elements, so that nothing a pattern says is ever taken for markup.

/** An element with attributes and children; text stays text. Handlers are given as onclick and so on. */
export function make(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  put(element, attributes);
  element.append(...children.filter((child) => child !== null && child !== undefined));
  return element;
}

const SVG = 'http://www.w3.org/2000/svg';

/** The same for drawings. */
export function draw(tag, attributes = {}, ...children) {
  const element = document.createElementNS(SVG, tag);
  put(element, attributes);
  element.append(...children);
  return element;
}

function put(element, attributes) {
  for (const [name, value] of Object.entries(attributes)) {
    if (name.startsWith('on')) element.addEventListener(name.slice(2), value);
    else if (value === true) element.setAttribute(name, '');
    else if (value !== false && value !== null && value !== undefined) element.setAttribute(name, value);
  }
}

/** Puts children in the place of all that an element holds. */
export function fill(element, ...children) {
  element.replaceChildren(...children.filter((child) => child !== null && child !== undefined));
}

/** The same where she may be writing: the field of the same id or `data-` name goes on with what is written, caret and all. */
export function refill(element, ...children) {
  const held = element.contains(document.activeElement) ? document.activeElement : null;
  const { value, defaultValue, selectionStart, selectionEnd } = held ?? {};
  // A browser takes a field that is put away for one that she has left.
  const notLeft = (event) => event.stopImmediatePropagation();
  element.addEventListener('change', notLeft, true);
  fill(element, ...children);
  element.removeEventListener('change', notLeft, true);
  if (!held || element.contains(document.activeElement)) return;
  const nameOf = (each) => each.id || Object.entries(each.dataset).join();
  const again = [...element.querySelectorAll(held.localName)].find((each) => nameOf(each) && nameOf(each) === nameOf(held));
  again?.focus({ preventScroll: true });
  if (!again || defaultValue === undefined || ['checkbox', 'radio'].includes(held.type)) return;
  if (value !== defaultValue) {
    again.value = value;
    const left = () => again.dispatchEvent(new Event('change', { bubbles: true }));
    again.addEventListener('blur', left, { once: true });
    again.addEventListener('change', () => again.removeEventListener('blur', left), { once: true });
  }
  if (typeof selectionStart === 'number') again.setSelectionRange(selectionStart, selectionEnd);
}

/** A text with its fractions set as fractions: 1 3/4 in. */
export function set(text) {
  const out = document.createDocumentFragment();
  let last = 0;
  for (const match of text.matchAll(/(\d+)\/(\d+)/g)) {
    out.append(text.slice(last, match.index).replace(/(\d) $/, '$1\u2009'));
    out.append(make('span', { class: 'fraction' },
        make('sup', { class: 'over' }, match[1]), '\u2044', make('sub', { class: 'under' }, match[2])));
    last = match.index + match[0].length;
  }
  out.append(text.slice(last));
  return out;
}
