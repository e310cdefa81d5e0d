import { ArrowRight, X } from 'lucide-react';
import { BASE, type OptionDesign } from '../../../geometry/approval/options.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { chooseOption, dropOption, editOption } from '../../state/actions/agreed/agree.ts';
import { useAct, usePage, useUi } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { IconButton } from '../../ui/IconButton.tsx';
import { t } from '../../words/t.ts';
import css from './OptionCard.module.css';
import { FACTS, factsThatDiffer, optionFacts } from './option-facts.ts';
import { OptionPicture } from './OptionPicture.tsx';
import { OptionVerdict } from './OptionVerdict.tsx';
import { PriceOf } from '../price/PriceOf.tsx';
import { useProofParts } from '../state/proof-context.ts';
import { usePlanned } from '../state/use-designs.ts';

interface OptionCardProps {
  readonly option: OptionDesign;
  readonly base: Design;
  /** Something was done that undo takes back. */
  readonly onDone: (sentence: string) => void;
}

const LONGEST_NAME = 60;

/** One of the designs to choose from: picture, what differs, price, days and verdict. */
export function OptionCard({ option, base, onDone }: OptionCardProps) {
  const { book, design: store } = usePage();
  const { store: proof } = useProofParts();
  const unit = useUi((s) => s.unit);
  const act = useAct();
  const planned = usePlanned(option.design);
  const isBase = option.id === BASE;
  const name = option.name || t(isBase ? 'proof.options.base' : 'proof.options.unnamed');
  const facts = optionFacts(option.design, book, unit, option.design.stock.process !== base.stock.process);
  const differs = isBase ? new Set<string>() : factsThatDiffer(option.design, base);
  const titleId = `option-${option.id}`;
  return (
    <article className={css.card} aria-labelledby={titleId}>
      <div className={css.picture}>
        <OptionPicture design={option.design} planned={planned} name={name} />
      </div>
      <div className={css.text}>
        <div className={css.head}>
          {isBase ? (
            <h3 id={titleId} className={css.name}>
              {name}
            </h3>
          ) : (
            <>
              <h3 id={titleId} className="sr-only">
                {name}
              </h3>
              <input
                className={css.naming}
                aria-label={t('proof.options.rename', { name })}
                value={option.name}
                placeholder={t('proof.options.unnamed')}
                maxLength={LONGEST_NAME}
                autoComplete="off"
                onChange={(e) => {
                  const { value } = e.target;
                  act((d) => editOption(d, option.id, { name: value }));
                }}
                onBlur={() => store.getState().closeMerge()}
              />
              <IconButton
                label={t('proof.options.remove', { name })}
                onClick={() => {
                  act((d) => dropOption(d, option.id));
                  onDone(t('proof.options.removed', { name }));
                }}
                sign={X}
              />
            </>
          )}
        </div>
        <dl className={css.facts}>
          {FACTS.map((fact) => (
            <div key={fact} data-differs={differs.has(fact) || undefined}>
              <dt>
                {t(`proof.facts.${fact}`)}
                {differs.has(fact) && <span className="sr-only"> ({t('proof.facts.differs')})</span>}
              </dt>
              <dd>{facts[fact]}</dd>
            </div>
          ))}
        </dl>
        <PriceOf design={option.design} planned={planned} name={name} />
        <OptionVerdict planned={planned} />
        <div className={css.way}>
          {isBase ? (
            <Button kind="next" onClick={() => proof.getState().set({ part: 'approve' })}>
              {t('proof.options.toApprove')} <ArrowRight size={16} aria-hidden />
            </Button>
          ) : (
            <Button
              kind="plain"
              aria-label={t('proof.options.takeNamed', { name })}
              onClick={() => {
                act((d) => chooseOption(d, option.id, t('proof.options.former')));
                onDone(t('proof.options.taken', { name }));
              }}
            >
              {t('proof.options.take')}
            </Button>
          )}
        </div>
      </div>
    </article>
  );
}
