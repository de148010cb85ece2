// What the frame of the workroom says.

const TROUBLE = {
  gone: (file) => `${file} is not there any more.`,
  unwritten: (reason) => `it could not be written (${reason}).`,
  full: (folder) => `the disk is full, and ${folder} could not be written. Make some room on it.`,
  foreign: (file) => `another program made something of ${file} that cannot be read as text here, so nothing is put in its place. Save it there as UTF-8, or move it away.`,
  read_only: (file) => `${file} is set to be read and not written. Allow it to be written; what you do stays in the folder’s history until then.`,
  fault: (fault) => `a fault of the program (${fault}).`,
};

export const ROOM = {
  kept: 'Every change is kept.',
  keeping: 'Keeping your changes…',
  down: 'The workroom does not answer. Your text is safe here; it is sent as soon as the workroom is back.',
  trouble: ({ key, of }) => `Your changes are here but not on the disk: ${TROUBLE[key](of)} They are kept as soon as they can be; leave this page open.`,
  missing: (files) => `${files.join(' and ')} ${files.length > 1 ? 'are' : 'is'} not in the folder any more; another program took ${files.length > 1 ? 'them' : 'it'} out. What stood in ${files.length > 1 ? 'them' : 'it'} is still here.`,
  putBack: 'Put it back',
  letBe: 'Leave it so',
  undo: 'Undo',
  redo: 'Redo',
  opening: 'Laying out the pieces…',
  outside: (file) => `Another program changed ${file} at the place where you are writing. Which is to stand? The other can be had back by undoing.`,
  outsideLines: 'The lines that differ',
  here: 'here',
  there: 'in the file',
  keepMine: 'Keep what is here',
  takeTheirs: 'Take what is in the file',
};

export const JOBS = {
  bodies: 'Bodies',
  bring: 'Bring in',
  draft: 'Draft',
  proof: 'Proof',
  cloth: 'Cloth',
  paper: 'Paper',
  making: 'Making',
  release: 'Release',
};
