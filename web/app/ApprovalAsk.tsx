import { wordingText } from '../words/say/finding-words.ts';
import { visible } from '../../geometry/design/visible.ts';
import { usePage, useUi } from '../page/page-context.ts';
import { Button } from '../ui/Button.tsx';
import { Modal } from '../ui/Modal.tsx';
import { momentWords } from '../words/say/moment-words.ts';
import { t } from '../words/t.ts';
import css from './OtherTab.module.css';

/** An approval came by a link: from whom and for what, before it is put on a design. Anybody can write a link. */
export function ApprovalAsk() {
  const { ui } = usePage();
  const asked = useUi((s) => s.approvalAsked);
  const unit = useUi((s) => s.unit);
  if (!asked) return null;
  const { name, at, title, changedSince, option, orderBy, take, look } = asked;
  const close = (): void => ui.getState().set({ approvalAsked: undefined });
  const closeAnd = (then: () => Promise<void>) => () => {
    close();
    void then();
  };
  return (
    <Modal labelledBy="approval-asked-title" onCancel={close}>
      <div className={css.inside}>
        <h2 id="approval-asked-title" className={css.title}>
          {t('approved.asked.title', { title })}
        </h2>
        <p>{t('approved.asked.from', { name, when: momentWords(at) })}</p>
        <p>{t(changedSince ? 'approved.asked.changed' : 'approved.asked.check')}</p>
        {option !== undefined && <p>{t('approved.asked.option', { option: visible(option) })}</p>}
        {orderBy.length > 0 && (
          <>
            <p>{t('approved.asked.order')}</p>
            <ul>
              {orderBy.map((words) => (
                <li key={words.english}>{wordingText(words, unit)}</li>
              ))}
            </ul>
            <Button kind="next" onClick={closeAnd(() => take(true))}>
              {t('approved.asked.takeOrder')}
            </Button>
          </>
        )}
        <Button kind={orderBy.length > 0 ? 'plain' : 'next'} onClick={closeAnd(() => take(false))}>
          {t(orderBy.length > 0 ? 'approved.asked.keepOrder' : 'approved.asked.take')}
        </Button>
        <p className={css.hint}>{t('approved.asked.takeHint')}</p>
        <Button kind="plain" onClick={closeAnd(look)}>
          {t('approved.asked.look')}
        </Button>
        <p className={css.hint}>{t('approved.asked.lookHint')}</p>
        <Button kind="quiet" onClick={close}>
          {t('approved.asked.leave')}
        </Button>
      </div>
    </Modal>
  );
}
