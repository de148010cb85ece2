// What Making says.

export const MAKING = {
  title: 'The booklet',
  waiting: 'The booklet is being set\u2026',
  late: 'Your last words are being set\u2026',
  none: 'The document does not say how it is made; a section that starts with make would.',
  table: 'A table of the booklet',
  line: (line) => `Line ${line} of the document`,
  cover: 'Cover',
  write: 'Write here',
  writeStep: 'Write beside this step',
  hint: 'What the pattern knows is set for you. Your own words stand in booklet.md; choose where, and write.',
  picture: 'Put your picture here',
  other: 'Another picture',
  ours: 'Our drawing again',
  tooLarge: 'The picture could not be read; choose a PNG, a JPEG or an SVG file.',
  amiss: (count) => (count === 1 ? 'One thing in your words wants mending:' : `${count} things in your words want mending:`),
  show: 'Show me',
  mend: 'Mend it so',
};
