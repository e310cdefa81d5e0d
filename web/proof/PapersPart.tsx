import { FileText } from 'lucide-react';
import { useState } from 'react';
import { saveFile } from '../app/save-file.ts';
import { useDesign, usePage, useUi } from '../app/page-context.ts';
import { Button } from '../ui/Button.tsx';
import { findingWords } from '../ui/finding-words.ts';
import { t } from '../words/t.ts';
import type { WantedFile } from '../worker/plate-api.ts';
import css from './PapersPart.module.css';
import { SendLink } from './SendLink.tsx';

/** All that goes out of the page: the proof, the spec sheet, the order, the link. */
export function PapersPart() {
  const design = useDesign();
  const { client } = usePage();
  const unit = useUi((s) => s.unit);
  const [phase, setPhase] = useState<{ readonly making: boolean; readonly sentence: string; readonly bad?: boolean }>({
    making: false,
    sentence: '',
  });

  async function take(wanted: WantedFile, what: string): Promise<void> {
    setPhase({ making: true, sentence: t('proof.papers.making', { what }) });
    const made = await client.files(design, [wanted]);
    if ('problem' in made) return setPhase({ making: false, sentence: t(made.problem), bad: true });
    if ('stopped' in made) {
      const { plate, finding } = made.stopped;
      const sentence = t('proof.papers.stopped', { plate, why: findingWords(finding, unit) });
      return setPhase({ making: false, sentence, bad: true });
    }
    made.files.forEach(saveFile);
    setPhase({ making: false, sentence: t('proof.papers.made', { name: made.files[0]?.name ?? '' }) });
  }

  return (
    <section className={css.part} aria-labelledby="proof-papers">
      <h2 id="proof-papers" className={css.title}>
        {t('proof.papers.title')}
      </h2>
      <p role="status" className={phase.bad ? css.bad : css.said}>
        {phase.sentence}
      </p>
      <ul className={css.papers}>
        <li>
          <div>
            <h3>{t('proof.papers.sheet')}</h3>
            <p>{t('proof.papers.sheetHint')}</p>
          </div>
          <Button
            kind="plain"
            disabled={phase.making}
            aria-label={`${t('proof.papers.take')}: ${t('proof.papers.sheet')}`}
            onClick={() => void take({ kind: 'spec-sheet' }, t('proof.papers.sheet'))}
          >
            <FileText size={16} aria-hidden /> {t('proof.papers.take')}
          </Button>
        </li>
        <li>
          <div>
            <h3>{t('proof.send.title')}</h3>
            <p>{t('proof.send.hint')}</p>
            <SendLink to="customer" />
          </div>
        </li>
      </ul>
    </section>
  );
}
