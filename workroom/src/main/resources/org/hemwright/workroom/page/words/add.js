// What is said while something is added by pointing.

const FIRST = {
  point: 'A point: point at the place, at a line it lies on, or at the point it goes from.',
  line: 'A line: point at where it starts; what is no point yet becomes one.',
  curve: 'A curve: point at where it starts; what is no point yet becomes one.',
  notch: 'A notch: point at the place on an edge.',
  seam: 'A seam: point at the first edge, then at what it is sewn to.',
  piece: 'A piece: point at two corners of a rectangle on the bare table, at more for other shapes; or at a piece to copy its outline, or at edges to be faced.',
  view: 'A view, one garment of the pattern: point at each piece that it takes.',
  measure: 'To measure: point at an edge or a point; then at another for what lies between them.',
};

const MORE = {
  point: 'Point at another point, line or place to say it by both; after two points a third to be mirrored across them, or a place at a distance from each.',
  line: 'Point at where it goes on.',
  curve: 'Point at what it runs through, and last at its end.',
  notch: 'Point at a point of the edge to set it there.',
  seam: 'Point at what it is sewn to; more edges lie end to end.',
  piece: 'Point at further corners or edges.',
  view: 'Point at further pieces.',
  measure: 'Every size stands in the ledger. Point at another to measure between them; at a third point for an angle.',
};

export const ADD = {
  group: 'Add to the drawing',
  add: 'Add a',
  what: { point: 'point', line: 'line', curve: 'curve', notch: 'notch', seam: 'seam', piece: 'piece', view: 'view', measure: 'measure' },
  or: 'or',
  keep: 'Keep it as a number',
  ways: 'How it will be written',
  called: 'called',
  write: 'Write it',
  back: 'Take the last back',
  leave: 'Leave it',
  prompt: (what, picks, ways = 0) => (picks === 0 ? FIRST[what] : ways ? `${MORE[what]} ${what === 'measure' ? '' : 'Enter writes what is chosen.'}` : MORE[what]),
  beside: (what) => (['seam', 'notch'].includes(what) ? 'That is no edge; point at one, or choose it in the ledger.' : what === 'measure' ? 'Point at an edge, a line or a point, or choose one in the ledger.' : what === 'view' ? 'Point at a piece, or choose one in the ledger.' : 'Point inside a piece, or choose one in the ledger first.'),
  way: {
    legs: 'so far across, so far up', square_way: 'one way only', angle: 'by angle and distance', origin: 'from the piece\u2019s origin',
    toward: 'toward the other point', midway: 'halfway', share_between: 'a share of the way', along: 'a length along it',
    share_along: 'a share of it', even: 'at all even parts', at_point: 'at the point', foot: 'straight across', compass: 'by a distance from the point',
    meeting: 'where both meet', straight: 'from point to point', smooth: 'smooth', smooth_square: 'smooth, leaving and arriving square',
    arc: 'part of a circle', double: 'a double notch', seam_notch: 'a notch of the seam, on every edge sewn in it', view: 'one garment', mirrored: 'mirrored across the first two', compasses: 'by a distance from each', layers: 'edge on edge', layers_reversed: 'the second the other way', every: 'all copies in a round',
    end_to_end: 'edges end to end', eased: 'the first eased on', rectangle: 'a rectangle', corners: 'with straight edges', outline_as: 'the outline of that piece', facing: 'a facing',
    length: 'its length', sum: 'together', difference: 'how much longer', distance: 'straight', across: 'across', rise: 'up', turn: 'angle', girth: 'round the garment at this height',
  },
};
