import { useRef, useState } from 'react';
import { usePage } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { Choice } from '../../ui/Choice.tsx';
import { t } from '../../words/t.ts';
import { AddOption } from './AddOption.tsx';
import { OptionCard } from './OptionCard.tsx';
import css from './OptionsPart.module.css';
import { useProof, useProofParts } from '../state/proof-context.ts';
import { QuantityFields } from './QuantityFields.tsx';
import { useOptions, usePlanning } from '../state/use-designs.ts';

/** The design and what it could be instead, side by side, each with its price. */
export function OptionsPart() {
  const { design } = usePage();
  const { store } = useProofParts();
  const view = useProof((s) => s.view);
  const options = useOptions();
  usePlanning(options.map((o) => o.design));
  const title = useRef<HTMLHeadingElement>(null);
  /** What was just done, with a way back. */
  const [said, setSaid] = useState<{ readonly sentence: string; readonly undo: boolean }>({
    sentence: '',
    undo: false,
  });
  const [base] = options;
  if (base === undefined) return null;
  return (
    <section className={css.part} aria-labelledby="proof-options">
      <div className={css.head}>
        <h2 id="proof-options" ref={title} tabIndex={-1} className={css.title}>
          {options.length > 1 ? t('proof.options.title', { count: options.length }) : t('proof.options.titleAlone')}
        </h2>
        <QuantityFields />
        <Choice<'barrel' | 'plate'>
          legend={t('page.views.legend')}
          value={view}
          options={[
            { value: 'barrel', label: t('proof.view.barrel') },
            { value: 'plate', label: t('proof.view.plate') },
          ]}
          onChange={(to) => store.getState().set({ view: to })}
        />
      </div>
      <p role="status" className={css.said}>
        {said.sentence}
        {said.undo && (
          <Button
            kind="quiet"
            onClick={() => {
              design.getState().undo();
              setSaid({ sentence: t('proof.undone'), undo: false });
              title.current?.focus();
            }}
          >
            {t('page.top.undo')}
          </Button>
        )}
      </p>
      <ul className={css.cards} data-count={options.length}>
        {options.map((option) => (
          <li key={option.id} className={css.item}>
            <OptionCard
              option={option}
              base={base.design}
              onDone={(sentence) => {
                setSaid({ sentence, undo: true });
                title.current?.focus();
              }}
            />
          </li>
        ))}
      </ul>
      <AddOption
        onAdded={(sentence) => {
          setSaid({ sentence, undo: true });
          title.current?.focus();
        }}
      />
    </section>
  );
}
