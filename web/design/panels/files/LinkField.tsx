import { Link, Share2 } from 'lucide-react';
import { useState } from 'react';
import { useDesign } from '../../../page/page-context.ts';
import { useHandOn } from '../../../handover/use-hand-on.ts';
import { Button } from '../../../ui/Button.tsx';
import { t } from '../../../words/t.ts';
import css from './LinkField.module.css';

/** The whole design as a link, to copy or to hand on. */
export function LinkField() {
  const design = useDesign();
  const { copy, share } = useHandOn();
  const [url, setUrl] = useState<string | undefined>();
  const [sentence, setSentence] = useState('');

  async function act(how: typeof copy): Promise<void> {
    const done = await how(design);
    setSentence(done.sentence);
    setUrl(done.byHand);
  }

  return (
    <div className={css.link}>
      <div className={css.row}>
        <Button kind="plain" onClick={() => void act(copy)}>
          <Link size={16} aria-hidden /> {t('link.copy')}
        </Button>
        {share && (
          <Button kind="plain" onClick={() => void act(share)}>
            <Share2 size={16} aria-hidden /> {t('link.share')}
          </Button>
        )}
      </div>
      <p className={css.hint}>{t('link.hint')}</p>
      <p role="status" className={css.said}>
        {sentence}
      </p>
      {url !== undefined && (
        <input
          className={css.url}
          aria-label={t('link.field')}
          value={url}
          readOnly
          onFocus={(e) => e.currentTarget.select()}
        />
      )}
    </div>
  );
}
