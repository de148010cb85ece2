// What the table says.

export const TABLE = {
  canvas: 'The pieces as they lie on the table. Everything on it can also be chosen in the ledger.',
  closer: 'Closer',
  farther: 'Farther',
  all: 'Show all',
  stitch: 'Stitch lines',
  points: 'Points',
  empty: 'Nothing can be drawn yet. The ledger says what is missing.',
};

export const TAPE = {
  size: 'Size on the table',
  from: 'Smallest size shown',
  to: 'Largest size shown',
  nest: 'All sizes',
  one: 'One size',
  base: 'base',
};

export const UNDER = {
  label: 'Laid on it',
  nothing: 'nothing',
  sizes: 'Another size',
  moments: 'As it was',
  releases: 'A release',
  opened: 'when first opened',
  size: (name) => `size ${name}`,
  release: (version) => `version ${version}`,
};
