import { type ReactNode, useState } from 'react';
import { usePage } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import text from '../../ui/text.module.css';
import { t } from '../../words/t.ts';

interface Done {
  readonly tell: (sentence: string) => void;
  readonly line: ReactNode;
}

/** What was just done to the design, in a sentence with a way back. */
export function useDone(onUndone?: () => void): Done {
  const { design } = usePage();
  const [status, setStatus] = useState({ sentence: '', undo: false });
  const line = (
    <p role="status" className={`${text.soft} ${text.status}`}>
      {status.sentence}
      {status.undo && (
        <Button
          kind="quiet"
          onClick={() => {
            design.getState().undo();
            setStatus({ sentence: t('proof.undone'), undo: false });
            onUndone?.();
          }}
        >
          {t('page.top.undo')}
        </Button>
      )}
    </p>
  );
  return { tell: (sentence) => setStatus({ sentence, undo: true }), line };
}
