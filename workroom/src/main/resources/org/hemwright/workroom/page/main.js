// Where the page starts: the frame, then the table, then the rest.
import { hear, open } from './line.js';
import { put, get, watch } from './state.js';
import { ROOM } from './words/room.js';
import { startTable } from './table/table.js';
import { startTape } from './tape/tape.js';
import { startLedger } from './ledger/ledger.js';
import { startJobs } from './jobs/jobs.js';
import { startNotices } from './notices.js';
import { startGuide } from './guide/guide.js';
import { askAfter } from './written.js';

const kept = document.getElementById('kept');
const undo = document.getElementById('undo');
const redo = document.getElementById('redo');
let lineUp = true;
let state = { kept: true, trouble: {} };

function tellKept() {
  const words = !lineUp ? ROOM.down : state.trouble.key ? ROOM.trouble(state.trouble) : (state.kept && !get('unsent') ? ROOM.kept : ROOM.keeping);
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

watch(['unsent'], tellKept);
// A page that is closed takes with it what the room has not yet.
window.addEventListener('beforeunload', (event) => { if (get('unsent')) event.preventDefault(); });

const back = (way) => askAfter(way).catch(() => {});
undo.addEventListener('click', () => back('undo'));
redo.addEventListener('click', () => back('redo'));
document.getElementById('moments').addEventListener('click', () => put({ job: 'moments' }));
document.addEventListener('keydown', (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  if (key === 'z' || key === 'y') {
    event.preventDefault();
    event.stopPropagation();
    back(key === 'y' || event.shiftKey ? 'redo' : 'undo');
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
