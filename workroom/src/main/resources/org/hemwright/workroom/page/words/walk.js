// What is said while a seam is walked.

const shown = (name) => name.replaceAll('_', ' ');

const MATE = { notch: 'its mate', joint: 'a seam or fold of the other' };

export const WALK = {
  start: (seam) => `Walk the seam ${shown(seam)}`,
  title: (seam) => `The seam ${shown(seam)}.`,
  lengths: (told) => `${told.lengths[0]} lie still, ${told.lengths[1]} roll along. ${told.even ? 'They end together.' : `${told.more} of the ${told.rest === 0 ? 'one that lies still' : 'one that rolls'} are left over.`}`,
  notch: (notch, index) => (notch.alone ? `Notch ${index + 1}, at ${notch.at}, meets none.`
    : notch.met ? `Notch ${index + 1}, at ${notch.at}, meets ${MATE[notch.mate]}.` : `Notch ${index + 1}, at ${notch.at}, lies ${notch.apart} from ${MATE[notch.mate]}.`),
  bare: 'No notches are passed.',
  along: 'How far the seam is walked',
  pass: 'Which pass:',
  ofPass: (number, layers) => `${number}. ${layers.join(' with ')}`,
  still: 'Lies still:',
  rolls: 'Rolls along:',
  again: 'Roll again',
  leave: 'Leave it',
};
