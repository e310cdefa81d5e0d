import { useState, type ReactNode } from 'react';
import { useUi } from '../../page/page-context.ts';
import { Cautions } from '../../page/Cautions.tsx';
import { Button } from '../../ui/Button.tsx';
import { findingWords, refusalWords } from '../../words/say/finding-words.ts';
import { Fold } from '../../ui/Fold.tsx';
import { t } from '../../words/t.ts';
import { useCut, useCutParts } from '../state/cut-context.ts';
import text from '../../ui/text.module.css';
import css from './CutSide.module.css';
import { DriftFold } from './DriftFold.tsx';
import { FilesFold } from './FilesFold.tsx';
import { SequenceFold } from './SequenceFold.tsx';
import { PriceFold } from './PriceFold.tsx';
import { ProcessFold } from './ProcessFold.tsx';
import { SeriesFold } from './SeriesFold.tsx';
import { SheetsFold } from './SheetsFold.tsx';
import { WhatIsCut } from './WhatIsCut.tsx';

/** In the order of the job: what is cut, from what, by what, in which order, how true, what it costs, the files. */
export function CutSide() {
  return (
    <>
      <NextStep />
      <div className={css.folds}>
        <Part title={t('cut.what.title')} open>
          <WhatIsCut />
        </Part>
        <Part title={t('cut.sheets.title')} open>
          <SheetsFold />
        </Part>
        <Part title={t('cut.process.title')}>
          <ProcessFold />
        </Part>
        <Part title={t('cut.order.title')}>
          <SequenceFold />
        </Part>
        <Part title={t('cut.drift.title')} stays>
          <DriftFold />
        </Part>
        <Part title={t('cut.price.title')}>
          <PriceFold />
        </Part>
        <Part title={t('cut.files.title')} stays>
          <FilesFold />
        </Part>
        <Part title={t('cut.series.title')} stays>
          <SeriesFold />
        </Part>
        <section className={css.cautions} aria-label={t('take.cautions')}>
          <Cautions />
        </section>
      </div>
    </>
  );
}

interface PartProps {
  readonly title: string;
  readonly open?: boolean;
  /** What was typed or is running in it outlives its closing. */
  readonly stays?: boolean;
  readonly children: ReactNode;
}

/** A fold that asks for nothing before it is opened. */
function Part({ title, open = false, stays = false, children }: PartProps) {
  const [isOpen, setOpen] = useState(open);
  const [seen, setSeen] = useState(open);
  return (
    <Fold
      title={title}
      open={isOpen}
      onToggle={(now) => {
        setOpen(now);
        if (now) setSeen(true);
      }}
    >
      {(isOpen || (stays && seen)) && children}
    </Fold>
  );
}

/** How far the order is, in a sentence, and the one next thing to do. */
function NextStep() {
  const { work } = useCutParts();
  const busy = useCut((s) => s.busy);
  const trouble = useCut((s) => s.trouble);
  const refused = useCut((s) => s.refused);
  const sheets = useCut((s) => s.history.present);
  const missing = useCut((s) => s.missing);
  const faults = useCut((s) => s.faults);
  const planned = useCut((s) => s.planned);
  const unit = useUi((s) => s.unit);
  const count = sheets.reduce((sum, { plates }) => sum + plates.length, 0);
  const sentence = busy
    ? t(`cut.work.${busy}`)
    : faults.length > 0
      ? t('cut.next.faults', { count: faults.length })
      : count === 0
        ? t('cut.next.nothing')
        : `${t('cut.next.plates', { count })} ${t('cut.next.sheets', { count: sheets.length })}${
            planned ? ` ${t('cut.next.planned')}` : ''
          }`;
  return (
    <section className={css.next} aria-label={t('cut.title')}>
      <h2 className={text.title}>{t('cut.title')}</h2>
      <p role="status" data-testid="cut-status">
        {sentence}
      </p>
      {trouble !== undefined && (
        <p role="alert" className={text.bad}>
          {t(trouble)}
        </p>
      )}
      {refused && (
        <p role="alert" className={text.bad}>
          {refusalWords(refused)}
        </p>
      )}
      {missing.map((miss) => (
        <p key={miss.wish} className={text.bad}>
          {miss.wish}: {findingWords(miss, unit)}
        </p>
      ))}
      {!planned && (
        <Button
          kind="next"
          disabled={count === 0 || faults.length > 0 || busy !== undefined}
          onClick={() => void work.plan()}
        >
          {t('cut.next.plan')}
        </Button>
      )}
    </section>
  );
}
