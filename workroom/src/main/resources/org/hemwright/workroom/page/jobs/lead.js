// The way from a finding to what it is about: the line of a text, the chart, the cloth, or the piece on the table.
import { get, put, select } from '../state.js';
import { goTo } from '../text/editor.js';
import { goToWords } from '../text/prose.js';

const JOB_OF = { 'layings.csv': 'cloth', 'sizes.csv': 'bodies' };

/** Where a finding leads, in a word; nothing where it leads nowhere. */
export function leads(finding) {
  if (finding.piece) return 'piece';
  if (finding.file && JOB_OF[finding.file]) return 'job';
  if (finding.from !== undefined) return 'line';
  return null;
}

/** Goes there. */
export function lead(finding) {
  const size = finding.sizes?.length ? get('sizes').indexOf(finding.sizes[0]) : -1;
  if (finding.file === 'booklet.md') {
    put({ job: 'making' });
    goToWords(finding.from, finding.revision);
    return;
  }
  if (finding.file && JOB_OF[finding.file]) {
    put({ job: JOB_OF[finding.file] });
    return;
  }
  if (finding.piece) {
    put({ job: 'proof', ...(size >= 0 ? { size } : {}), finding: findingOf(finding) });
    select({ kind: 'piece', piece: finding.piece, name: finding.piece });
  }
  if (finding.from !== undefined) setTimeout(() => goTo(finding.from, finding.revision), finding.piece ? 200 : 0);
}

/** The same finding among those that are pinned, where it is one of them. */
function findingOf(finding) {
  return get('findings').find((each) => each.code === finding.code && each.message === finding.message)?.number ?? null;
}
