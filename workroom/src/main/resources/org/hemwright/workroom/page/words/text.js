// What stands round the document.

export const TEXT = {
  title: 'Document',
  mend: 'Mend it so',
};
