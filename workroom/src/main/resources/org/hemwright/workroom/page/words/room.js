// What the frame of the workroom says.

const TROUBLE = {
  gone: (file) => `${file} is not there any more.`,
  unwritten: (reason) => `it could not be written (${reason}).`,
  fault: (fault) => `a fault of the program (${fault}).`,
};

export const ROOM = {
  kept: 'Every change is kept.',
  keeping: 'Keeping your changes…',
  down: 'The workroom does not answer. Your text is safe here; it is sent as soon as the workroom is back.',
  trouble: ({ key, of }) => `Your changes are here but not on the disk: ${TROUBLE[key](of)} They are kept as soon as they can be; leave this page open.`,
  undo: 'Undo',
  redo: 'Redo',
  opening: 'Laying out the pieces…',
  outside: (file) => `Another program changed ${file} at the place where you are writing.`,
  keepMine: 'Keep what is here',
  takeTheirs: 'Take what is in the file',
};

export const JOBS = {
  bodies: 'Bodies',
  draft: 'Draft',
  proof: 'Proof',
  cloth: 'Cloth',
  paper: 'Paper',
  making: 'Making',
  release: 'Release',
};
