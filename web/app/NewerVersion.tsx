import { useState } from 'react';
import { useStore } from 'zustand';
import { Button } from '../ui/Button.tsx';
import { t } from '../words/t.ts';
import css from './NewerVersion.module.css';
import { usePage } from '../page/page-context.ts';

/** A newer version waits: the person says when. It comes by itself at the next start. */
export function NewerVersion() {
  const { newer } = usePage();
  const changeOver = useStore(newer, (s) => s.changeOver);
  const [later, setLater] = useState<typeof changeOver>();
  return (
    <div role="status">
      {changeOver !== undefined && later !== changeOver && (
        <p className={css.bar}>
          <span>{t('keep.newer')}</span>
          <Button kind="quiet" onClick={() => void changeOver()}>
            {t('keep.newerNow')}
          </Button>
          <Button kind="quiet" onClick={() => setLater(() => changeOver)}>
            {t('keep.newerLater')}
          </Button>
        </p>
      )}
    </div>
  );
}
