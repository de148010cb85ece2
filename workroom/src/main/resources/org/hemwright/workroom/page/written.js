// What is written here and is not with the room yet, in whichever text.
import { ask } from './line.js';
import { put } from './state.js';

const texts = [];

/**
 * Counts a text in. Its `unmade()` are its edits that the room has not made yet, in order, each with a list `then` of
 * what is done once it is made; it is `stuck` while the room would not have them.
 */
export function countIn(text) {
  texts.push(text);
}

/** Tells the window whether there is anything. */
export function tellUnsent() {
  put({ unsent: texts.some((text) => text.unmade().length > 0) });
}

/** Asks something once all that is written by now is with the room, and before what is written later goes there. */
export function askAfter(word, fields) {
  return new Promise((resolve, reject) => {
    const before = texts.filter((text) => !text.stuck).map((text) => text.unmade().at(-1)).filter(Boolean);
    let left = before.length;
    const act = () => ask(word, fields).then(resolve, reject);
    if (left === 0) act();
    for (const each of before) each.then.push(() => { if (--left === 0) act(); });
  });
}
