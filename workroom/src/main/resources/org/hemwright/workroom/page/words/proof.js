// What Proof says.

export const PROOF = {
  title: (open) => (open === 0 ? 'Nothing to mend' : open === 1 ? 'One thing to look at' : `${open} things to look at`),
  asking: 'The checks are being asked\u2026',
  asked: (well, asked) => `${well} of ${asked} checks find all well, in every size.`,
  late: 'The checks are being asked about your last change\u2026',
  status: { fail: 'Must be mended', warn: 'Worth a look', accepted: 'Accepted', ok: 'Well' },
  mend: 'Mend it so',
  reason: 'Or leave it as it is, because',
  accept: 'Accept',
  because: (reason) => `You accept it: \u201c${reason}\u201d`,
};
