// What this window looks at. Each value has a name; who watches it hears when it changes.

const values = {
  job: 'draft',
  sizes: [],
  styles: [],
  base: 0,
  size: 0,
  from: 0,
  to: 0,
  selected: null,
  lit: [],
  places: [],
  placesOf: 0,
  problems: [],
  findings: [],
  measured: null,
  file: 'pattern.hem',
};
const watchers = new Map();

/** A value as it stands. */
export function get(name) {
  return values[name];
}

/** Changes some values at once; watchers hear once for all of them. */
export function put(changes) {
  const changed = new Set();
  for (const [name, value] of Object.entries(changes)) {
    if (values[name] === value) continue;
    values[name] = value;
    for (const watcher of watchers.get(name) ?? []) changed.add(watcher);
  }
  for (const watcher of changed) watcher();
}

/** Calls back whenever one of some values changes. */
export function watch(names, watcher) {
  for (const name of names) {
    if (!watchers.has(name)) watchers.set(name, []);
    watchers.get(name).push(watcher);
  }
}

/** Selects a thing: {kind, piece, name}, or nothing. `by` says who did, so that it need not follow itself. */
export function select(thing, by = '') {
  const now = values.selected;
  if (now && thing && now.kind === thing.kind && now.piece === thing.piece && now.name === thing.name) return;
  put({ selected: thing ? { ...thing, by } : null });
}
