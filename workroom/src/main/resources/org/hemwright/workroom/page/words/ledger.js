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
  notch: (part) => `${part.called ? part.called.replaceAll('_', ' ') : part.ticks > 1 ? 'double notch' : 'notch'} on ${part.edge.replaceAll('_', ' ')}`,
};
