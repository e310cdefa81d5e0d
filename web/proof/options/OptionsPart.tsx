import { useRef } from 'react';
import { t } from '../../words/t.ts';
import { AddOption } from './AddOption.tsx';
import { OptionCard } from './OptionCard.tsx';
import css from './OptionsPart.module.css';
import { useDone } from '../controls/use-done.tsx';
import { ViewChoice } from '../controls/ViewChoice.tsx';
import { QuantityFields } from './QuantityFields.tsx';
import { useOptions, usePlanning } from '../state/use-designs.ts';

/** The design and what it could be instead, side by side, each with its price. */
export function OptionsPart() {
  const options = useOptions();
  usePlanning(options.map((o) => o.design));
  const title = useRef<HTMLHeadingElement>(null);
  const { tell, line } = useDone(() => title.current?.focus());
  const done = (sentence: string): void => {
    tell(sentence);
    title.current?.focus();
  };
  const [base] = options;
  if (base === undefined) return null;
  return (
    <section className={css.part} aria-labelledby="proof-options">
      <div className={css.head}>
        <h2 id="proof-options" ref={title} tabIndex={-1} className={css.title}>
          {options.length > 1 ? t('proof.options.title', { count: options.length }) : t('proof.options.titleAlone')}
        </h2>
        <QuantityFields />
        <ViewChoice />
      </div>
      {line}
      <ul className={css.cards} data-count={options.length}>
        {options.map((option) => (
          <li key={option.id} className={css.item}>
            <OptionCard option={option} base={base.design} onDone={done} />
          </li>
        ))}
      </ul>
      <AddOption onAdded={done} />
    </section>
  );
}
