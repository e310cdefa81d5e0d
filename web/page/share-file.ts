import type { MadeFile } from '../worker/plate-api.ts';

/**
 * Hands a file to the system's share sheet (W3C Web Share, files). `no` where the browser cannot: then saveFile is the
 * way. `left`: the person closed the sheet.
 */
export async function shareFile(file: MadeFile, title: string, text: string): Promise<'shared' | 'left' | 'no'> {
  const shared = { files: [new File([file.bytes], file.name, { type: file.type })], title, text };
  const able = navigator as Partial<Pick<Navigator, 'canShare' | 'share'>>;
  if (!able.share || !able.canShare?.(shared)) return 'no';
  try {
    await navigator.share(shared);
    return 'shared';
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'left' : 'no';
  }
}
