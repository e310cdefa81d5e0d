import { Button } from '../ui/Button.tsx';
import { Modal } from '../ui/Modal.tsx';
import { t } from '../words/t.ts';
import css from './OtherTab.module.css';
import { usePage, useSaving } from '../page/page-context.ts';

/** Another tab works on this design: three ways on, none of which loses anything. */
export function OtherTab() {
  const { own } = usePage();
  const elsewhere = useSaving((s) => s.tab === 'elsewhere');
  if (!elsewhere) return null;
  return (
    <Modal labelledBy="other-tab-title" onCancel={() => own.look()}>
      <div className={css.inside}>
        <h2 id="other-tab-title" className={css.title}>
          {t('keep.elsewhereTitle')}
        </h2>
        <p>{t('keep.elsewhereHint')}</p>
        <Button kind="next" onClick={() => void own.takeOver()}>
          {t('keep.takeOver')}
        </Button>
        <p className={css.hint}>{t('keep.takeOverHint')}</p>
        <Button kind="plain" onClick={() => own.copyHere()}>
          {t('keep.makeCopy')}
        </Button>
        <p className={css.hint}>{t('keep.makeCopyHint')}</p>
        <Button kind="plain" onClick={() => own.look()}>
          {t('keep.look')}
        </Button>
        <p className={css.hint}>{t('keep.lookHint')}</p>
      </div>
    </Modal>
  );
}
