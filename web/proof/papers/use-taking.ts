import { useState } from 'react';
import type { Design } from '../../../geometry/design/schema.ts';
import { usePage, useUi } from '../../page/page-context.ts';
import { findingWords } from '../../words/say/finding-words.ts';
import { t } from '../../words/t.ts';
import type { MadeFile, Progress, WantedFile } from '../../worker/plate-api.ts';

export interface Taking {
  readonly making: boolean;
  readonly sentence: string;
  readonly bad?: boolean;
  readonly progress?: Progress;
}

interface Taker {
  readonly taking: Taking;
  /** The files, or none where they cannot be had: then it is said why. */
  readonly make: (wanted: readonly WantedFile[], what: string) => Promise<readonly MadeFile[]>;
}

/** Has files of a design made, and says how far it is and what came of it. */
export function useTaking(design: Design): Taker {
  const { client } = usePage();
  const unit = useUi((s) => s.unit);
  const [taking, setTaking] = useState<Taking>({ making: false, sentence: '' });

  async function make(wanted: readonly WantedFile[], what: string): Promise<readonly MadeFile[]> {
    const sentence = t('proof.papers.making', { what });
    setTaking({ making: true, sentence });
    const made = await client.files(design, wanted, (progress) => setTaking({ making: true, sentence, progress }));
    if ('files' in made) {
      const name = made.files.map((file) => file.name).join(', ');
      setTaking({ making: false, sentence: t('proof.papers.made', { name }) });
      return made.files;
    }
    const why =
      'problem' in made
        ? t(made.problem)
        : t('proof.papers.stopped', { plate: made.stopped.plate, why: findingWords(made.stopped.finding, unit) });
    setTaking({ making: false, sentence: why, bad: true });
    return [];
  }

  return { taking, make };
}
