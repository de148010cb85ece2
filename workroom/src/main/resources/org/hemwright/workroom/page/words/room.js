// What the frame of the workroom says.

export const ROOM = {
  kept: 'Every change is kept.',
  keeping: 'Keeping your changes…',
  down: 'The workroom does not answer. Your text is safe here; it is sent as soon as the workroom is back.',
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
