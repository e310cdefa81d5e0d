import { X } from 'lucide-react';
import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { IconButton } from '../ui/IconButton.tsx';
import { t } from '../words/t.ts';
import css from './Notice.module.css';
import { usePage, useUi } from './page-context.ts';

const READ_MS = 8000;

/** One calm sentence: what just happened, or that saving needs the person's help. */
export function Notice() {
  const { ui, saving } = usePage();
  const notice = useUi((s) => s.notice);
  const state = useStore(saving, (s) => s.state);
  const [closed, setClosed] = useState<string | undefined>();
  const lasting = (state === 'full' || state === 'shut') && closed !== state ? t(`saving.${state}`) : undefined;
  const text = notice ?? lasting;

  function close(): void {
    if (notice === undefined) setClosed(state);
    else ui.getState().set({ notice: undefined });
  }

  useEffect(() => {
    if (notice === undefined) return;
    const timer = setTimeout(() => ui.getState().set({ notice: undefined }), Math.max(READ_MS, notice.length * 80));
    return () => clearTimeout(timer);
  }, [notice, ui]);

  return (
    <div role="status" className={css.place}>
      {text !== undefined && (
        <p className={css.notice}>
          {text}
          <IconButton label={t('trouble.close')} sign={X} size={16} onClick={close} />
        </p>
      )}
    </div>
  );
}
