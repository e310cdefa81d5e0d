import { expect } from 'vitest';
import { withWords } from '../web/words/t.ts';

/* Tests of the page call its code without its lazy ways in: all words are there from the start. */
if (/[\\/]tests[\\/](web|words|hostile|stock|shop)[\\/]/.test(expect.getState().testPath ?? '')) {
  await withWords(Promise.resolve(), 'work', 'cut', 'proof');
}
