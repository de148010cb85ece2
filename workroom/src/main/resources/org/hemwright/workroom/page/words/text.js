// What stands round the texts.

export const TEXT = {
  title: 'Document',
  texts: 'Which text is shown',
  names: { 'pattern.hem': 'Document', 'booklet.md': 'The booklet\u2019s words' },
  mend: 'Mend it so',
  neatly: 'Set it neatly',
  neat: (lines) => (lines === 0 ? 'It is neat' : lines === 1 ? '1 line set' : `${lines} lines set`),
  slips: 'What is to be mended in the document',
  slip: (at, n, line) => (n === 1 ? `Line ${line}:` : `${at} of ${n}, line ${line}:`),
  next: 'Next',
  before: 'The one before',
  keys: 'F12 goes to where a name is said, F2 gives it another, F8 goes to what is to be mended. Ctrl and blank proposes what may come next. Escape and then Tab leaves the document.',
  wordsKeys: 'A brace begins a place for a number, a table or a drawing. Ctrl and blank proposes what may come next. Tab leaves the text.',
  kinds: { part: 'not in this booklet', step: 'step', place: '', table: 'table', figure: 'drawing', picture: 'your picture', number: 'number', size: 'size', view: 'view', cloth: 'cloth' },
};
