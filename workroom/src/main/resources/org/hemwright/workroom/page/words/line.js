// What is said where a question did not reach the workroom.

export const LINE = {
  down: 'The workroom does not answer just now.',
  broke: 'The workroom went away before it answered.',
};
