// What is said round another name.

const WHY = {
  no_name: (name) => `\u201c${name}\u201d is no name. A name starts with a letter and goes on with letters, digits and blanks.`,
  same: (name) => `It is called \u201c${name}\u201d already.`,
  taken: (name) => `\u201c${name}\u201d stands in the document already, for another thing or in a fixed phrase. Choose a name that stands nowhere in it.`,
  unknown: () => 'Its own line is not in the document: a measurement is named by the heading of its column, in Bodies.',
  unfollowed: () => 'Not every place that says it could be followed, so nothing was changed. Mend what is told under the words first.',
};

const lines = (n) => (n === 1 ? 'One line changes' : `${n} lines change`);

export const RENAME = {
  start: 'Give it another name',
  label: (name) => `Another name for ${name}, wherever it is said`,
  show: 'See what changes',
  give: 'Rename',
  leave: 'Leave it',
  why: (key, name) => (WHY[key] ?? WHY.unfollowed)(name),
  changes: (n, files) => `${lines(n)}${files > 1 ? ` in ${files} files` : ''}. Enter renames; one undo brings all of it back.`,
  where: (file, line) => `${file}, line ${line}`,
  perhaps: (n) => (n === 1 ? 'One place in running words may mean it too' : `${n} places in running words may mean it too`),
  perhapsHint: 'Tick those that do; the others stay as they are.',
  picture: (file, name) => `pictures/${file} belongs to a step that is called otherwise then: call the file ${name}.`,
};
