import type { Refused } from '../../../geometry/sentences/wording.ts';
import { withWords } from '../t.ts';

/** Why something could not be taken, in the language spoken; for code that comes before the words of this do. */
export async function sayRefusal(refused: Refused): Promise<string> {
  try {
    const { refusalWords } = await withWords(import('./finding-words.ts'), 'work');
    return refusalWords(refused);
  } catch {
    return refused.problem;
  }
}
