import { ShieldAlert } from 'lucide-react';
import type { Design } from '../../../geometry/design/schema.ts';
import type { UnsoundOrder } from '../../../geometry/order-file/order-file.ts';
import { Button } from '../../ui/Button.tsx';
import { refusalWords } from '../../words/say/finding-words.ts';
import { t } from '../../words/t.ts';
import text from '../../ui/text.module.css';
import css from './OrderDialog.module.css';
import { closeOrder } from './order-store.ts';

interface UnsoundOrderPartProps {
  readonly order: UnsoundOrder;
  readonly onLook: (design: Design) => void;
}

/** What is wrong with an order, file by file; its design only as a copy that is marked. */
export function UnsoundOrderPart({ order, onLook }: UnsoundOrderPartProps) {
  const { faults, design, isOrder } = order;
  return (
    <>
      <div role="alert" className={css.unsound}>
        <h3 className={css.verdict}>
          <ShieldAlert size={20} aria-hidden /> {t(isOrder ? 'handOver.unsound' : 'handOver.notOrder')}
        </h3>
        {isOrder && <p>{t('handOver.unsoundHint')}</p>}
        <ul className={css.faults}>
          {faults.map((fault) => (
            <li key={`${fault.file ?? ''} ${fault.words.key}`}>
              {fault.file !== undefined && <strong>{fault.file}</strong>}
              <p>{refusalWords(fault)}</p>
            </li>
          ))}
        </ul>
      </div>
      <div className={css.foot}>
        {design && (
          <div className={css.look}>
            <Button kind="plain" onClick={() => onLook(design)}>
              {t('handOver.look')}
            </Button>
            <p className={text.note}>{t('handOver.lookHint')}</p>
          </div>
        )}
        <Button kind="next" onClick={closeOrder}>
          {t('handOver.close')}
        </Button>
      </div>
    </>
  );
}
