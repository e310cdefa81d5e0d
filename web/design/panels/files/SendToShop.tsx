import { Mail, Send } from 'lucide-react';
import { useState } from 'react';
import type { ShopBook } from '../../../../geometry/shop/shop-book.ts';
import type { PlateResult } from '../../../../geometry/plate/plate.ts';
import { copyText, linkTo } from '../../../handover/link/hand-on.ts';
import { mailTo } from '../../../handover/link/mail-to.ts';
import { LinkStatus } from '../../../handover/LinkStatus.tsx';
import { useDesign, usePage } from '../../../page/page-context.ts';
import { shareFile } from '../../../page/share-file.ts';
import { Button } from '../../../ui/Button.tsx';
import layout from '../../../ui/layout.module.css';
import text from '../../../ui/text.module.css';
import { t } from '../../../words/t.ts';
import { pictureOfPlate } from './picture-of-plate.ts';

interface SendToShopProps {
  readonly shop: ShopBook | undefined;
  readonly plate: PlateResult | undefined;
  /** The price as it was said, for the shop to see what the customer saw. */
  readonly price: string | undefined;
  readonly disabled: boolean;
}

/** Hands the order to the shop: by the device's own share sheet with link, text and picture, else by mail. */
export function SendToShop({ shop, plate, price, disabled }: SendToShopProps) {
  const design = useDesign();
  const { own } = usePage();
  const [status, setStatus] = useState('');
  const [byHand, setByHand] = useState<string>();
  const canShare = typeof (navigator as Partial<Navigator>).canShare === 'function';
  const email = shop?.contact.email;
  const subject = t('take.send.subject', { title: design.title });

  function letter(): { readonly body: string; readonly url: string } | undefined {
    const link = linkTo(design, own.id(), 'proof');
    if (!('url' in link)) {
      setStatus(t('take.send.tooLarge'));
      return undefined;
    }
    const { who, neededBy, notes } = design.order;
    const said = [
      t('take.send.body'),
      price === undefined ? '' : t('take.send.price', { price }),
      who === '' ? '' : `${t('take.who')}: ${who}`,
      neededBy === '' ? '' : `${t('take.neededBy')}: ${neededBy}`,
      notes,
    ];
    return { body: `${said.filter((line) => line !== '').join('\n')}\n\n${link.url}\n`, url: link.url };
  }

  async function share(): Promise<void> {
    const made = letter();
    const picture = plate && (await pictureOfPlate(plate, design.title));
    if (!made) return;
    const shared = picture ? await shareFile(picture, subject, made.body) : 'no';
    if (shared === 'shared') setStatus(t('take.send.sent'));
    if (shared === 'no') mail();
  }

  function mail(): void {
    const made = letter();
    if (!made) return;
    const href = mailTo({ address: email, subject, body: made.body });
    if (href !== undefined) {
      location.assign(href);
      return;
    }
    void copyText(`${subject}\n\n${made.body}`).then((copied) => {
      setStatus(copied ? t('take.send.pasted', { address: email ?? t('take.send.theShop') }) : t('link.notCopied'));
      setByHand(copied ? undefined : made.url);
    });
  }

  return (
    <div className={layout.stack}>
      <Button kind="next" disabled={disabled} onClick={() => (canShare ? void share() : mail())}>
        <Send size={18} aria-hidden /> {t('take.send.button')}
      </Button>
      {canShare && email !== undefined && (
        <Button kind="plain" disabled={disabled} onClick={mail}>
          <Mail size={16} aria-hidden /> {t('take.send.mail', { address: email })}
        </Button>
      )}
      <p className={text.note}>{t('take.send.hint')}</p>
      <LinkStatus sentence={status} byHand={byHand} />
    </div>
  );
}
