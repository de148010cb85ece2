// What stands round the lines of a selected thing.

export const LINES = {
  title: 'Its lines',
  number: (written, line) => `${written}, in line ${line}; type another`,
  will: 'Enter writes:',
  ways: 'How it will be written',
  kind: {
    as_there: 'in the unit that stands there',
    as_typed: 'as you typed it',
    this_size: 'in this size alone',
    from_here: 'from this size up',
    all_sizes: 'in all sizes, by the same amount',
  },
  none: (written) => `Type a number like ${written}; any unit will do, and fractions: 1 1/4 in.`,
  write: 'Write it',
  leave: 'Leave it',
};
