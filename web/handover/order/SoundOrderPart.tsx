import { showFingerprint } from '../../../geometry/design/show-fingerprint.ts';
import { Download, ShieldCheck } from 'lucide-react';
import { orderWords, standingOf } from '../../../geometry/approval/standing.ts';
import { visible } from '../../../geometry/design/visible.ts';
import { DESIGN_NAME, type OrderFile } from '../../../geometry/order-file/order-file.ts';
import type { ShopBook } from '../../../geometry/shop/shop-book.ts';
import type { CheckedOrder } from '../../worker/plate-api.ts';
import { usePage, useUi } from '../../page/page-context.ts';
import { saveFile } from '../../page/save-file.ts';
import { Button } from '../../ui/Button.tsx';
import { IconButton } from '../../ui/IconButton.tsx';
import { wordingText } from '../../words/say/finding-words.ts';
import { momentDay } from '../../words/say/moment-words.ts';
import { t } from '../../words/t.ts';
import text from '../../ui/text.module.css';
import css from './OrderDialog.module.css';
import { closeOrder } from './order-store.ts';

/** What was proven of an order, and its files to take. */
export function SoundOrderPart({ order }: { readonly order: CheckedOrder }) {
  const { ui, shop } = usePage();
  const { design, manifest, files, byEye } = order;
  const { approval } = design;
  const standing = standingOf(design, manifest.fingerprint);
  const unit = useUi((s) => s.unit);
  return (
    <>
      <div role="status" className={css.sound}>
        <p className={css.verdict}>
          <ShieldCheck size={20} aria-hidden /> {t('handOver.verified', { count: files.length + 1 })}
        </p>
        <p>
          {approval && !byEye.includes(DESIGN_NAME)
            ? t('handOver.approved', { name: visible(approval.name), day: momentDay(approval.at) })
            : t('handOver.notApproved')}
        </p>
        {standing.kind !== 'open' && <p>{wordingText(orderWords(standing.order).words, unit)}.</p>}
        <p>{signedWords(order, shop)}</p>
        <p>{t('handOver.opened', { title: visible(design.title) })}</p>
      </div>
      <p className={text.note}>
        <strong>{t('handOver.fingerprint', { fingerprint: showFingerprint(manifest.fingerprint) })}</strong>{' '}
        {t('handOver.compare')}
      </p>
      {byEye.length > 0 && <p className={text.note}>{t('handOver.byEye', { names: byEye.join(', ') })}</p>}
      <p className={text.note}>{t('handOver.papers')}</p>
      <h3 className={css.filesTitle}>{t('handOver.files')}</h3>
      <ul className={css.files}>
        {files.map((file) => (
          <li key={file.name}>
            <span>
              <bdi>{file.name}</bdi>
              <span className={css.role}>{t(`handOver.roles.${file.role}`)}</span>
            </span>
            <IconButton label={t('handOver.take', { name: file.name })} sign={Download} onClick={() => take(file)} />
          </li>
        ))}
      </ul>
      <div className={css.foot}>
        <Button
          kind="next"
          onClick={() => {
            ui.getState().set({ page: 'design' });
            closeOrder();
          }}
        >
          {t('handOver.toDesign')}
        </Button>
      </div>
    </>
  );
}

/** By whose key. */
function signedWords({ signed, signature }: CheckedOrder, shop: ShopBook | undefined): string {
  if (signed === 'unsigned' || !signature) return t('handOver.signed.not');
  if (signed === 'unchecked') return t('handOver.signed.unchecked');
  if (shop && shop.orderKey === signature.key) return t('handOver.signed.by', { name: shop.name });
  return t('handOver.signed.unknown', { key: signature.key });
}

function take({ name, bytes }: OrderFile): void {
  saveFile({ name, type: 'application/octet-stream', bytes: bytes.slice() });
}
