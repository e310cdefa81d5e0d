import { Link, Share2 } from 'lucide-react';
import { useState } from 'react';
import { useDesign } from '../../../page/page-context.ts';
import { LinkStatus } from '../../../handover/LinkStatus.tsx';
import { useHandOn } from '../../../handover/use-hand-on.ts';
import { Button } from '../../../ui/Button.tsx';
import { t } from '../../../words/t.ts';
import layout from '../../../ui/layout.module.css';
import text from '../../../ui/text.module.css';

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
    <div className={layout.stack}>
      <div className={layout.buttons}>
        <Button kind="plain" onClick={() => void act(copy)}>
          <Link size={16} aria-hidden /> {t('link.copy')}
        </Button>
        {share && (
          <Button kind="plain" onClick={() => void act(share)}>
            <Share2 size={16} aria-hidden /> {t('link.share')}
          </Button>
        )}
      </div>
      <p className={text.note}>{t('link.hint')}</p>
      <LinkStatus sentence={sentence} byHand={url} />
    </div>
  );
}
