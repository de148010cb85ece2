// What is said to who is shown round.

export const GUIDE = {
  offer: 'New here?',
  offered: (title) => `Two minutes round the table, on ${title}.`,
  yes: 'Show me round',
  no: 'Not now',
  next: 'Go on',
  back: 'Back',
  last: 'To work',
  leave: 'Leave off',
  done: 'Just so.',
  place: (at, of) => `${at} of ${of}`,
  again: 'Show me round',
  away: 'Other patterns',
};

/** The stations, in order; each is given the pattern's own names and numbers. */
export const STATIONS = {
  table: {
    title: 'Your pieces',
    words: (own) => [`Here lie ${own.pieces === 1 ? 'the one piece' : `the ${own.pieces} pieces`} of ${own.title}, cut lines and stitch lines, in size ${own.size}.`,
      'Turn the wheel to come closer, drag the bare table to move it. The keys +, \u2212 and 0 do the same.'],
  },
  tape: {
    title: 'The tape',
    words: (own) => [`The tape along the edge is your size run, ${own.smallest} to ${own.largest}.`,
      'Slide along it, or press the arrow keys on it, and every piece is drawn in that size. Pull its brass ends apart to see several sizes at once.'],
    ask: 'Slide to another size.',
  },
  ledger: {
    title: 'The ledger',
    words: (own) => ['Whatever you point at is told here in numbers, in every size, in centimetres and inches.',
      `Point at an edge of ${own.piece}, or choose it in this list.`],
    ask: 'Choose a piece or an edge.',
  },
  drag: {
    title: 'Numbers that you wrote',
    words: () => ['Take a point and move it. The numbers that you wrote change in the document, rounded as you write them, and every other size follows.',
      'What will be written stands at the bottom of the table while you hold it. Undo takes it back.'],
    ask: 'Move a point, or turn a dial in the ledger.',
  },
  text: {
    title: 'The document',
    words: () => ['This text is the pattern; the drawing only shows it. What you choose on the table is marked here, and the other way round.',
      'A slip is underlined, with what would mend it. Write in it at any time.'],
  },
  jobs: {
    title: 'The jobs',
    words: () => ['From top to bottom in the order of the work: the bodies you draft for, the draft, the proof that it sews together, the cloth it takes, the paper, the booklet, the release.',
      'A figure beside a job says how many things wait for you there.'],
  },
  kept: {
    title: 'Nothing is lost',
    words: () => ['Every change is kept as it is made. Undo goes back as far as you like, tomorrow too.',
      'That is all. \u201cShow me round\u201d brings this back.'],
  },
};
