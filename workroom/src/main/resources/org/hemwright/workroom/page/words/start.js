// What the start page says.

const WHY = {
  busy: (place) => `${place} is open in another workroom. Go on in its window, or close it there first.`,
  none: (place) => `There is no pattern at ${place}. A pattern is a folder that holds pattern.hem.`,
  closed: (place) => `${place} cannot be read and written. Look at who may do so.`,
  taken: (place) => `${place} is there already, and nothing was written into it. Choose another name.`,
  unwritable: (place) => `${place} could not be written. Look at whether the disk is full, and at who may write there.`,
  fault: () => 'This is a fault of the program; nothing was changed.',
};

export const START = {
  title: 'What lies on the table today?',
  asking: 'Looking for your patterns\u2026',
  down: 'The workroom does not answer. Start it again, and open the address that it prints.',
  go: 'Go on',
  begin: 'Begin a garment',
  look: 'Look at a whole garment',
  none: 'No pattern lies here yet. Begin one from a block, or look at a garment that is whole.',
  typed: 'A pattern that lies elsewhere',
  typedHint: 'Its folder, as your file window shows it',
  open: 'Open it',
  blocks: 'A sound block to begin from; every number in it can be changed.',
  run: 'Whom is it for?',
  runHint: 'Size runs of our own, copied from none. They fit no one in particular: measure the people you draft for, and put your own numbers in under Bodies.',
  notFor: (block) => `${block} is not drafted for this run.`,
  named: 'What is it called?',
  lies: (place) => `It will lie in a folder of its own in ${place}.`,
  start: 'Begin',
  choose: 'Choose a block first.',
  name: 'Give it a name first.',
  examples: (place) => `Each is copied to ${place} and can be changed at will; a copy made before is opened as you left it.`,
  opening: (title) => `Laying out ${title}\u2026`,
  pieces: (title) => `The pieces of ${title} in the size it is drafted in`,
  drawing: 'being drawn\u2026',
  why: (why, place) => (WHY[why] ?? WHY.fault)(place),
};

/** What a block is called where only its folder's name is known. */
export const BLOCKS = {
  'one-piece-leg': 'Bottoms, the leg one piece',
  trousers: 'Trousers',
  'knit-tee': 'Knit tee',
  'skirt-block': 'Fitted skirt',
  'raglan-top': 'Raglan top',
  'darted-bodice': 'Darted bodice',
};

/** A size run, and whom it fits. */
export const RUNS = {
  women: { title: 'Women, sizes 6 to 22', fits: 'Bust 80 to 116 cm \u00b7 31 1/2 to 45 5/8 in, of about 168 cm; drafted in 12.' },
  plus: { title: 'Women of larger sizes, 20 to 36', fits: 'Bust 110 to 158 cm \u00b7 43 1/4 to 62 1/4 in, of about 168 cm; drafted in 28.' },
  men: { title: 'Men, sizes 88 to 124', fits: 'A size is its chest in centimetres: 88 to 124 cm \u00b7 34 5/8 to 48 7/8 in; drafted in 104.' },
  children: { title: 'Children, sizes 92 to 152', fits: 'A size is the height in centimetres: 92 to 152 cm \u00b7 36 1/4 to 59 7/8 in, boys and girls alike; drafted in 122. Girths differ more than heights tell.' },
};
