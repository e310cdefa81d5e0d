import { t } from '../../words/t.ts';
import css from '../papers/SendLink.module.css';
import { SendLink } from '../papers/SendLink.tsx';

/** Approved: now the shop has to hear of it. */
export function SendBack() {
  return (
    <div className={css.back}>
      <p>{t('proof.send.backHint')}</p>
      <SendLink to="shop" />
    </div>
  );
}
