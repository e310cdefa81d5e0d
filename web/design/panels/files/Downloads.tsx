import { Download, FileText, Save, Shapes } from 'lucide-react';
import { useState } from 'react';
import { useStore } from 'zustand';
import { saveDesignFile } from '../../../handover/save-design-file.ts';
import { saveFile } from '../../../page/save-file.ts';
import { useDesign, usePage, usePlates, useUi } from '../../../page/page-context.ts';
import { useFilesHeld } from '../../../page/use-files-held.ts';
import { Button } from '../../../ui/Button.tsx';
import { findingWords } from '../../../words/say/finding-words.ts';
import { t } from '../../../words/t.ts';
import type { WantedFile } from '../../../worker/plate-api.ts';
import css from './Downloads.module.css';

type Phase =
  | { readonly kind: 'rest' }
  | { readonly kind: 'making' }
  | { readonly kind: 'done' | 'failed'; readonly sentence: string };

/** The files to take home; none while something stops the cut, and then it says what. */
export function Downloads() {
  const design = useDesign();
  const { client, saving, book } = usePage();
  const unit = useUi((s) => s.unit);
  const saved = useStore(saving, (s) => s.state);
  const plates = usePlates((s) => s.plates);
  const settled = usePlates((s) => !s.busy && s.trouble === undefined);
  const held = useFilesHeld();
  const [phase, setPhase] = useState<Phase>({ kind: 'rest' });
  const stopped = design.plates.filter((p) => plates[p.id]?.verdict === 'stop');
  const can = (plateId: string): boolean =>
    !held && settled && plates[plateId] !== undefined && plates[plateId].verdict !== 'stop' && phase.kind !== 'making';
  const canAll = design.plates.every((p) => can(p.id));

  async function take(wanted: readonly WantedFile[]): Promise<void> {
    setPhase({ kind: 'making' });
    const made = await client.files(design, wanted);
    if ('problem' in made) {
      setPhase({ kind: 'failed', sentence: t(made.problem) });
      return;
    }
    if ('stopped' in made) {
      setPhase({ kind: 'failed', sentence: `${made.stopped.plate}: ${findingWords(made.stopped.finding, unit)}` });
      return;
    }
    made.files.forEach(saveFile);
    setPhase({ kind: 'done', sentence: t('take.done', { count: made.files.length }) });
  }

  return (
    <section className={css.downloads}>
      {held && <p className={css.failed}>{t('trouble.numbers.held')}</p>}
      {stopped.length === 0 && !settled && <p className={css.note}>{t('take.notReady')}</p>}
      <Button kind="next" disabled={!canAll} onClick={() => void take([{ kind: 'all' }])}>
        <Download size={18} aria-hidden /> {t('take.all')}
      </Button>
      <p className={css.note}>{t('take.allHint')}</p>
      <ul className={css.single}>
        {design.plates.map((plate) => (
          <li key={plate.id}>
            <span className={css.name}>{plate.name}</span>
            <Button
              kind="plain"
              disabled={!can(plate.id)}
              aria-label={`${plate.name}: ${t('take.dxf')}`}
              onClick={() => void take([{ kind: 'dxf', plateId: plate.id }])}
            >
              <Shapes size={16} aria-hidden /> DXF
            </Button>
            <Button
              kind="plain"
              disabled={!can(plate.id)}
              aria-label={`${plate.name}: ${t('take.svg')}`}
              onClick={() => void take([{ kind: 'svg', plateId: plate.id }])}
            >
              <Shapes size={16} aria-hidden /> SVG
            </Button>
          </li>
        ))}
        <li>
          <span className={css.name}>{t('take.sheet')}</span>
          <Button
            kind="plain"
            disabled={!canAll}
            aria-label={t('take.sheet')}
            onClick={() => void take([{ kind: 'spec-sheet' }])}
          >
            <FileText size={16} aria-hidden /> PDF
          </Button>
        </li>
        <li>
          <span className={css.name}>
            {t('take.saveDesign')}
            <span className={css.sub}>{t('take.saveDesignHint')}</span>
            <span className={saved === 'full' || saved === 'shut' ? css.failed : css.sub}>{t(`saving.${saved}`)}</span>
          </span>
          <Button kind="plain" aria-label={t('take.saveDesign')} onClick={() => saveDesignFile(design, book)}>
            <Save size={16} aria-hidden /> JSON
          </Button>
        </li>
      </ul>
      <p role="status" className={phase.kind === 'failed' ? css.failed : css.note}>
        {phase.kind === 'making' ? t('take.making') : phase.kind === 'rest' ? '' : phase.sentence}
      </p>
    </section>
  );
}
