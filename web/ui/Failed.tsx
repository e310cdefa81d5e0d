import type { ReactNode } from 'react';
import { t } from '../words/t.ts';
import { Button } from './Button.tsx';
import css from './Failed.module.css';
import { Modal } from './Modal.tsx';

interface FailedProps {
  /** failed: it did not come, or broke while it was drawn. slow: it has not come yet. */
  readonly how: 'failed' | 'slow';
  readonly onAgain: () => void;
  /** Given for what lies over the page: the way back to it. */
  readonly onClose?: (() => void) | undefined;
}

/** Stands in for a part of the page that cannot be shown: what is wrong, and the ways on. */
export function Failed({ how, onAgain, onClose }: FailedProps): ReactNode {
  const card = (
    <div className={css.failed} role="alert" data-testid="part-failed">
      <p id="part-failed" className={css.title}>
        {t(`page.part.${how}`)}
      </p>
      <p className={css.hint}>{t('page.part.safe')}</p>
      <div className={css.buttons}>
        <Button kind="next" onClick={onAgain}>
          {t('page.part.again')}
        </Button>
        {onClose && (
          <Button kind="plain" onClick={onClose}>
            {t('page.part.close')}
          </Button>
        )}
      </div>
    </div>
  );
  if (!onClose) return card;
  return (
    <Modal labelledBy="part-failed" onCancel={onClose}>
      {card}
    </Modal>
  );
}
