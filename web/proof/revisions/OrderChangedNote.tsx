import { OctagonAlert } from 'lucide-react';
import type { OrderStanding } from '../../../geometry/approval/standing.ts';
import { useAct, useUi } from '../../page/page-context.ts';
import { bringOrderBack } from '../../state/actions/agreed/agree.ts';
import { Button } from '../../ui/Button.tsx';
import { wordingText } from '../../words/say/finding-words.ts';
import { t } from '../../words/t.ts';
import css from './ChangedNote.module.css';

/** What is cut is as approved, and how many, for how much or under which number is not: said loud, with the way back. */
export function OrderChangedNote({ order }: { readonly order: Extract<OrderStanding, { kind: 'changed' }> }) {
  const act = useAct();
  const unit = useUi((s) => s.unit);
  return (
    <section role="alert" className={css.note} aria-labelledby="order-changed">
      <div className={css.line}>
        <OctagonAlert size={24} aria-hidden className={css.sign} />
        <div className={css.text}>
          <h2 id="order-changed">{t('proof.changed.orderTitle')}</h2>
          <p>{order.by.map((words) => wordingText(words, unit)).join('; ')}</p>
        </div>
        <div className={css.buttons}>
          <Button kind="plain" onClick={() => act(bringOrderBack)}>
            {t('proof.changed.orderBack')}
          </Button>
        </div>
      </div>
    </section>
  );
}
