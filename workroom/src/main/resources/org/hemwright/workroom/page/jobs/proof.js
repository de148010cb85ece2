// Proof: what the checks found, as a list; each is a pin on the drawing too.
import { fill, make, set } from '../dom.js';
import { ask, hear } from '../line.js';
import { get, put, watch } from '../state.js';
import { goTo, mend } from '../text/editor.js';
import { PROOF } from '../words/proof.js';
import { count } from './jobs.js';

let page = null;
let told = null;
const reasons = new Map();

hear('checks', (head) => {
  told = head;
  put({ findings: head.findings });
  const open = head.findings.filter((each) => each.status !== 'accepted');
  count('proof', open.length, open.some((each) => each.status === 'fail'));
  if (page) list();
});

watch(['finding'], () => { if (page) list(); });

export function show(holder) {
  page = holder.page;
  list();
  return () => { page = null; };
}

function list() {
  const held = document.activeElement;
  const typing = held?.dataset?.reason;
  const findings = told?.findings ?? [];
  const open = findings.filter((each) => each.status !== 'accepted');
  const late = told && told.revision < get('revision');
  fill(page, make('h2', {}, told ? PROOF.title(open.length) : PROOF.asking),
      make('p', { class: 'soft' }, late ? PROOF.late : told?.asked ? PROOF.asked(told.well, told.asked) : ''),
      make('ol', { class: 'findings' }, ...findings.map(item)));
  const current = page.querySelector('.finding.current');
  if (current) current.scrollIntoView({ block: 'nearest' });
  // Checks may come in while she writes a reason: the caret stays where it was.
  const again = [...page.querySelectorAll('[data-reason]')].find((each) => each.dataset.reason === typing);
  again?.focus();
  again?.setSelectionRange(held.selectionStart, held.selectionEnd);
}

function item(finding) {
  const current = get('finding') === finding.number;
  const choose = () => {
    put({ finding: finding.number });
    if (finding.from !== undefined && finding.file === 'pattern.hem') goTo(finding.from, finding.revision, false);
  };
  return make('li', { class: `finding ${finding.status}${current ? ' current' : ''}` },
      make('button', { type: 'button', class: 'finding-head', onclick: choose, 'aria-expanded': current ? 'true' : 'false' },
          make('span', { class: 'pin' }, String(finding.number)),
          make('span', {}, make('b', {}, `${PROOF.status[finding.status]} \u00b7 `), finding.subject.replaceAll('_', ' '))),
      make('p', {}, set(finding.message)),
      finding.because ? make('p', { class: 'soft' }, PROOF.because(finding.because)) : null,
      current && finding.mend ? make('p', { class: 'soft' }, set(finding.mend)) : null,
      current && finding.status !== 'accepted' ? acts(finding) : null);
}

function acts(finding) {
  const id = `because-${finding.number}`;
  const key = `${finding.check} ${finding.subject}`;
  const reason = make('input', { type: 'text', id, 'data-reason': key, value: reasons.get(key) ?? '', oninput: () => reasons.set(key, reason.value) });
  const accept = () => {
    if (!reason.value.trim()) {
      reason.focus();
      return;
    }
    ask('accept', { check: finding.check, subject: finding.subject, because: reason.value }).catch(() => {});
  };
  return make('div', { class: 'finding-acts' },
      finding.edit ? make('button', { type: 'button', class: 'chief', onclick: () => mend(finding) }, PROOF.mend) : null,
      make('label', { for: id }, PROOF.reason), reason,
      make('button', { type: 'button', onclick: accept }, PROOF.accept));
}
