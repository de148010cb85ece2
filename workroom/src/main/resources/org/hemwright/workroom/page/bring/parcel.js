// A file of hers on its way to the workroom, in parts.
import { make } from '../dom.js';
import { ask } from '../line.js';
import { PARCEL } from '../words/bring.js';

const PART = 1_500_000;

/** Sends a file; refuses one that is too large with the words for it. */
export async function send(file) {
  const bytes = new Uint8Array(await file.arrayBuffer());
  let at = 0;
  do {
    const part = bytes.subarray(at, at + PART);
    const answer = await ask('parcel', { name: file.name, at, of: bytes.length, bytes: await base64(part) });
    if (answer.large) throw new Error(PARCEL.large(answer.large));
    at += part.length;
  } while (at < bytes.length);
}

function base64(bytes) {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(reader.result.slice(reader.result.indexOf(',') + 1));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(new Blob([bytes]));
  });
}

/** A place where a file is chosen or let fall; `take` is called once it is there. */
export function fileField({ label, accept, take }) {
  const input = make('input', { type: 'file', accept, id: 'brought-file', class: 'file-input' });
  const told = make('p', { class: 'soft', role: 'status' });
  const bring = async (file) => {
    if (!file) return;
    told.textContent = PARCEL.sending(file.name);
    try {
      await send(file);
      told.textContent = '';
      await take(file.name);
    } catch (trouble) {
      told.textContent = trouble.message;
    }
    input.value = '';
  };
  input.addEventListener('change', () => bring(input.files[0]));
  const place = make('div', { class: 'file-place' },
      make('label', { for: 'brought-file', class: 'file-label' }, label), input, make('p', { class: 'soft' }, PARCEL.drop), told);
  place.addEventListener('dragover', (event) => { event.preventDefault(); place.classList.add('over'); });
  place.addEventListener('dragleave', () => place.classList.remove('over'));
  place.addEventListener('drop', (event) => {
    event.preventDefault();
    place.classList.remove('over');
    bring(event.dataTransfer.files[0]);
  });
  return place;
}
