// What stands round the document.

export const TEXT = {
  title: 'Document',
  mend: 'Mend it so',
  keys: 'F12 goes to where a name is said, F2 gives it another. Ctrl and blank proposes what may come next. Escape and then Tab leaves the document.',
};
