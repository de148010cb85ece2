// What Bodies says.

export const BODIES = {
  title: 'Body measurements',
  hint: (file, base) => `${file}: a row a size${base ? `, drafted in size ${base}` : ''}. Paste a block from a spreadsheet at any cell.`,
  none: 'The document names no chart that can be written in here. A spreadsheet file is read as it is; save it as CSV to change it here.',
  steps: 'Show the step from size to size',
  heading: (column) => `Heading of column ${column + 1}`,
  sizeName: (row) => `Name of size ${row}`,
  line: (line) => `Line ${line}:`,
};
