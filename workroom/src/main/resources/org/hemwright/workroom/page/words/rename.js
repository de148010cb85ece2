// What is said round another name.

export const RENAME = {
  start: 'Give it another name',
  label: (name) => `Another name for ${name}, wherever the document says it`,
  give: 'Rename',
  stays: (name) => `It keeps its name: \u201c${name}\u201d is no name, or stands in the document already. A name starts with a letter and goes on with letters, digits and blanks.`,
};
