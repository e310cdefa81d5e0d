import { saveFile } from './save-file.ts';

/** Hands out saved texts that could not be read, so that somebody can mend them by hand. */
export function saveAsideFiles(texts: readonly string[]): void {
  texts.forEach((text, i) =>
    saveFile({
      name: `bridgehead-set-aside-${i + 1}.json`,
      type: 'application/json',
      bytes: new TextEncoder().encode(text),
    }),
  );
}
