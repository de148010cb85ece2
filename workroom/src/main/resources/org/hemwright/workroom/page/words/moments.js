// What Moments says.

export const MOMENTS = {
  title: 'Moments',
  hint: 'Give this moment a name, and you can come back to it, or see at any time what has changed since.',
  name: 'What is this moment called?',
  keep: 'Keep this moment',
  first: 'As it was first opened here',
  after: (edits) => (edits === 0 ? 'nothing written since' : edits === 1 ? 'one edit since' : `${edits} edits since`),
  since: (name) => `Since \u201c${name}\u201d`,
  choose: 'Choose a moment, to see its lines against those of now.',
  comparing: 'Being compared\u2026',
  alike: 'Every text stands as it did then.',
  nothing: 'The texts differ, but nothing that is drawn, sewn or bought has changed.',
  undrawn: { was: 'The document of that moment cannot be drawn, so there is nothing to lay on it.', is: 'The document cannot be drawn as it stands; mend what is marked under its words.' },
  pattern: 'The pattern',
  was: 'as it was',
  now: 'as it is now',
  back: 'Go back to this moment',
  backHint: 'Undo brings back what you have now.',
  gone: 'All stands as it did then. Undo brings back what you had.',
  picture: (title, size) => `${title} in size ${size}: the old line against the new`,
  size: (size) => `Drawn in size ${size}; slide along the tape for another.`,
};
