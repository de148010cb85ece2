// What Making says.

export const MAKING = {
  title: 'The booklet',
  waiting: 'The booklet is being set\u2026',
  none: 'The document does not say how it is made; a section that starts with make would.',
  table: 'A table of the booklet',
  line: (line) => `Line ${line} of the document`,
};
