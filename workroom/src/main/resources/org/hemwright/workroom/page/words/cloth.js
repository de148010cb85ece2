// What Cloth says.

export const CLOTH = {
  name: 'Cloth',
  title: (size) => `Laid in size ${size}`,
  waiting: 'Being laid\u2026',
  hint: 'Slide along the tape to lay another size.',
  laying: (size, done, of) => `Size ${size}: ${done} of ${of} layings `,
  misfit: (pieces) => (pieces.length ? `too narrow for ${pieces.join(', ').replaceAll('_', ' ')}` : 'does not fit'),
  alt: (row, size) => `Cutting layout of size ${size} on ${row.width}, ${row.fold}`,
  caption: (row) => `${row.heading} \u00b7 ${row.width}, ${row.fold}: ${row.length}; ${row.density}% of the cloth is used.`,
};
