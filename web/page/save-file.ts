import type { MadeFile } from '../worker/plate-api.ts';

/** Long enough for any browser to have taken the file over. */
const KEEP_MS = 60_000;

/** Bytes, or what the browser keeps of them. */
type Savable = Omit<MadeFile, 'bytes'> & { readonly bytes: MadeFile['bytes'] | Blob };

/** Hands a file to the browser's downloads. */
export function saveFile(file: Savable): void {
  const url = URL.createObjectURL(new Blob([file.bytes], { type: file.type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = file.name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), KEEP_MS);
}
