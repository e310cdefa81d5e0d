import { CircleDashed, FolderOpen, Link } from 'lucide-react';
import { useState } from 'react';
import { useBegin } from './use-begin.ts';
import { Button } from '../../ui/Button.tsx';
import { FileButton } from '../../ui/FileButton.tsx';
import { t } from '../../words/t.ts';
import css from './Beginnings.module.css';

/** The other ways in: an empty head, a file from before, a link. */
export function OtherWays() {
  const begin = useBegin();
  const [linkOpen, setLinkOpen] = useState(false);
  return (
    <section aria-labelledby="begin-others" className={css.others}>
      <h3 id="begin-others" className={css.title}>
        {t('begin.others')}
      </h3>
      <div className={css.ways}>
        <Button kind="plain" onClick={begin.empty}>
          <CircleDashed size={16} aria-hidden /> {t('begin.emptyHead')}
        </Button>
        <FileButton
          accept=".json,.zip,application/json,application/zip"
          testId="open-design"
          onFiles={([chosen]) => chosen && void begin.file(chosen)}
        >
          <FolderOpen size={16} aria-hidden /> {t('begin.open')}
        </FileButton>
        <Button kind="plain" aria-expanded={linkOpen} onClick={() => setLinkOpen(!linkOpen)}>
          <Link size={16} aria-hidden /> {t('begin.link')}
        </Button>
      </div>
      {linkOpen && (
        <p className={css.hint} role="status">
          {t('begin.linkHint')}
        </p>
      )}
    </section>
  );
}
