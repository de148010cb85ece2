// Where the page starts: the frame, then the table, then the rest.
import { hear, open, ask } from './line.js';
import { put, get, watch } from './state.js';
import { ROOM } from './words/room.js';
import { startTable } from './table/table.js';
import { startTape } from './tape/tape.js';
import { startLedger } from './ledger/ledger.js';
import { startJobs } from './jobs/jobs.js';
import { startNotices } from './notices.js';
import { startGuide } from './guide/guide.js';

const kept = document.getElementById('kept');
const undo = document.getElementById('undo');
const redo = document.getElementById('redo');
let lineUp = true;
let state = { kept: true, trouble: {} };

function tellKept() {
  const words = !lineUp ? ROOM.down : state.trouble.key ? ROOM.trouble(state.trouble) : (state.kept ? ROOM.kept : ROOM.keeping);
  kept.classList.toggle('trouble', !lineUp || Boolean(state.trouble.key));
  // What is said again is not announced again.
  if (kept.textContent !== words) kept.textContent = words;
}

function stateTold(head) {
  state = head;
  undo.disabled = !head.undo;
  redo.disabled = !head.redo;
  put({ revision: head.revision, folder: head.folder, files: head.files, missing: head.missing, title: head.title });
  tellKept();
}

hear('hello', (head) => { put({ window: head.window }); stateTold(head); });
hear('state', stateTold);
hear('line', (head) => { lineUp = head.up; tellKept(); });

startNotices();

undo.addEventListener('click', () => ask('undo'));
redo.addEventListener('click', () => ask('redo'));
document.getElementById('moments').addEventListener('click', () => put({ job: 'moments' }));
document.addEventListener('keydown', (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  if (key === 'z' || key === 'y') {
    event.preventDefault();
    event.stopPropagation();
    ask(key === 'y' || event.shiftKey ? 'redo' : 'undo').catch(() => {});
  }
}, true);

watch(['title'], () => {
  document.getElementById('title').textContent = get('title') || 'Hemwright';
  document.title = `${get('title') || 'Hemwright'} · workroom`;
});

startTable();
startTape();
startLedger();
startJobs();
startGuide();
open();
// The editor is large: the pieces are drawn first.
import('./text/editor.js').then((editor) => editor.startEditor());
