// What the ledger says.

export const LEDGER = {
  all: 'All pieces',
  pieces: 'Pieces',
  none: 'No piece can be drawn yet. What is missing is told under the words of the document.',
  hint: 'Point at a piece, an edge or a point on the table to see its numbers in every size.',
  everySize: 'In every size',
  notHere: 'Not in this size',
  edges: 'Edges',
  points: 'Points',
  measured: 'Measured',
  lines: 'Lines and curves',
  notches: 'Notches',
  joins: 'It joins',
  seams: (n) => (n === 1 ? 'One seam' : `${n} seams`),
  notch: (part) => `${part.called ? part.called.replaceAll('_', ' ') : part.ticks > 1 ? 'double notch' : 'notch'} on ${part.edge.replaceAll('_', ' ')}`,
  titled: { notch: (edge) => `Notch on ${edge}`, double_notch: (edge) => `Double notch on ${edge}` },
  sentence: {
    piece: (number, name) => `Piece ${number}, ${name} in the document.`,
    fold: () => 'Lies on the fold of the cloth.',
    sewn: (seam) => `Sewn in the seam ${seam}.`,
  },
  label: {
    width: () => 'Width', height: () => 'Height', area: () => 'Area, opened', length: () => 'Length', sewn: () => 'Length, sewn',
    drawn: () => 'Length, drawn', allowance: () => 'Allowance', right: () => 'Right of the piece\u2019s origin',
    up: () => 'Up from the piece\u2019s origin', from_start: () => 'From the start of the edge', value: () => 'Value',
    first_layer: () => 'The first layer, sewn', second_layer: () => 'The second layer, sewn', surplus: () => 'The first is longer by',
    longer: (seam) => `Longer than what it is sewn to, ${seam}`, named: (name) => name,
  },
};
