// Her own pictures: chosen from her files, made small enough for paper, and sent to the folder.
import { make } from '../dom.js';
import { ask } from '../line.js';
import { MAKING } from '../words/making.js';

/** A photograph of more pixels than this along its longer side says no more on paper. */
const LONGEST = 2400;

/** Larger files are made smaller before they are sent (bytes). */
const MOST = 2_400_000;

/** Asks for a file and puts it in the place of a drawing; says whether one was chosen. */
export function takePicture(name) {
  const input = make('input', { type: 'file', accept: 'image/png,image/jpeg,image/svg+xml', hidden: true, 'aria-label': MAKING.picture });
  document.body.append(input);
  return new Promise((resolve, reject) => {
    input.addEventListener('cancel', () => { input.remove(); resolve(false); });
    input.addEventListener('change', () => {
      const file = input.files[0];
      input.remove();
      if (!file) resolve(false);
      else send(name, file).then(() => resolve(true), reject);
    });
    input.click();
  });
}

async function send(name, file) {
  const vector = file.type === 'image/svg+xml';
  const small = vector || (file.size <= MOST && ['image/png', 'image/jpeg'].includes(file.type)) ? file : await smaller(file);
  await ask('put_picture', { name, type: small.type, base64: await base64(small) });
}

async function smaller(file) {
  let image;
  try {
    image = await createImageBitmap(file);
  } catch {
    throw new Error(MAKING.tooLarge);
  }
  const scale = Math.min(1, LONGEST / Math.max(image.width, image.height));
  const canvas = make('canvas', { width: Math.round(image.width * scale), height: Math.round(image.height * scale) });
  const context = canvas.getContext('2d');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve) => { canvas.toBlob(resolve, 'image/jpeg', 0.88); });
}

function base64(blob) {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(reader.result.slice(reader.result.indexOf(',') + 1));
    reader.onerror = () => reject(new Error(MAKING.tooLarge));
    reader.readAsDataURL(blob);
  });
}
