import { Link, Mail, Save, Share2 } from 'lucide-react';
import { useState } from 'react';
import { LinkStatus } from '../../handover/LinkStatus.tsx';
import { saveDesignFile } from '../../handover/save-design-file.ts';
import { useDesign, usePage } from '../../page/page-context.ts';
import { copyText, linkTo, shareLink } from '../../handover/link/hand-on.ts';
import { Button } from '../../ui/Button.tsx';
import { t } from '../../words/t.ts';
import { mailTo } from '../../handover/link/mail-to.ts';
import layout from '../../ui/layout.module.css';
import css from './SendLink.module.css';

interface SendLinkProps {
  /** customer: to be looked at and approved. shop: approved, on its way back. */
  readonly to: 'customer' | 'shop';
}

/** The design with all that belongs to it as a link: shared, copied or mailed; as a file where it is too large. */
export function SendLink({ to }: SendLinkProps) {
  const design = useDesign();
  const { shop, book, own } = usePage();
  const [status, setStatus] = useState('');
  const [byHand, setByHand] = useState<string | undefined>();
  const canShare = typeof (navigator as Partial<Navigator>).share === 'function';
  const next = to === 'shop';

  function link(): string | undefined {
    const made = linkTo(design, own.id(), 'proof');
    if ('url' in made) return made.url;
    setStatus(t('proof.send.tooLarge'));
    return undefined;
  }

  async function copy(): Promise<void> {
    const url = link();
    if (url === undefined) return;
    const copied = await copyText(url);
    setStatus(copied ? t(`proof.send.copied.${to}`) : t('link.notCopied'));
    setByHand(copied ? undefined : url);
  }

  async function share(): Promise<void> {
    const url = link();
    if (url !== undefined && (await shareLink(design.title, url))) setStatus(t('link.shared'));
  }

  function mail(): void {
    const url = link();
    if (url === undefined) return;
    const address = to === 'shop' ? shop?.contact.email : undefined;
    const subject = t(`proof.send.subject.${to}`, { title: design.title });
    const href = mailTo({ address, subject, body: `${t(`proof.send.body.${to}`)}\n\n${url}\n` });
    if (href === undefined) {
      setStatus(t('proof.send.tooLongForMail'));
      return;
    }
    location.assign(href);
  }

  return (
    <div className={layout.stack}>
      <div className={`${layout.buttons} ${css.buttons}`}>
        {canShare && (
          <Button kind={next ? 'next' : 'plain'} className={next ? css.first : undefined} onClick={() => void share()}>
            <Share2 size={16} aria-hidden /> {t(`proof.send.share.${to}`)}
          </Button>
        )}
        <Button
          kind={next && !canShare ? 'next' : 'plain'}
          className={next && !canShare ? css.first : undefined}
          onClick={() => void copy()}
        >
          <Link size={16} aria-hidden /> {t(`proof.send.copy.${to}`)}
        </Button>
        <Button kind="plain" onClick={mail}>
          <Mail size={16} aria-hidden /> {t('proof.send.mail')}
        </Button>
        <Button kind="plain" onClick={() => saveDesignFile(design, book)}>
          <Save size={16} aria-hidden /> {t('proof.send.file')}
        </Button>
      </div>
      <LinkStatus sentence={status} byHand={byHand} />
    </div>
  );
}
