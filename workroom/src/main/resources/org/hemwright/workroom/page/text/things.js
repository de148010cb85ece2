// The names of the document's places as things to be selected.

/** The thing of a place's name and kind; nothing where it cannot be selected. */
export function thingOf(name, kind) {
  if (kind === 'piece') return { kind, piece: name, name };
  if (kind === 'notch') return { kind, piece: name.split('#')[0], name: name.split('#')[1] };
  if (kind === 'seam') return { kind, piece: '', name };
  const dot = name.indexOf('.');
  if (['edge', 'point', 'path'].includes(kind)) return { kind, piece: name.slice(0, dot), name: name.slice(dot + 1) };
  if (['dial', 'number'].includes(kind)) return { kind, piece: dot < 0 ? '' : name.slice(0, dot), name: name.slice(dot + 1) };
  return null;
}
