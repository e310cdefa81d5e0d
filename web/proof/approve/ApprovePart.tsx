import { useMemo } from 'react';
import { isAllApproved, standingOf } from '../../../geometry/approval/standing.ts';
import { useDesign, usePage } from '../../page/page-context.ts';
import { Cautions } from '../../page/Cautions.tsx';
import { t } from '../../words/t.ts';
import { ApproveForm } from './ApproveForm.tsx';
import { ApprovedNote } from './ApprovedNote.tsx';
import layout from '../../ui/layout.module.css';
import text from '../../ui/text.module.css';
import css from './ApprovePart.module.css';
import { BigPicture } from './BigPicture.tsx';
import { FindingsToAccept } from './FindingsToAccept.tsx';
import { PriceOf } from '../price/PriceOf.tsx';
import { TextsToRead } from './TextsToRead.tsx';
import { useFingerprint, usePlanned, usePlanning } from '../state/use-designs.ts';
import { WhatIsMade } from './WhatIsMade.tsx';

/** What the customer says yes to: picture, every letter, sizes, sheet, cautions and price, and then the name. */
export function ApprovePart() {
  const design = useDesign();
  const { shop } = usePage();
  const fingerprint = useFingerprint();
  const planned = usePlanned(design);
  usePlanning(useMemo(() => [design], [design]));
  const standing = standingOf(design, fingerprint);
  const { who } = design.order;
  const done = isAllApproved(standing);
  return (
    <section className={css.part} aria-labelledby="proof-approve">
      <div className={css.picture}>
        <BigPicture design={design} plates={planned.state === 'ready' ? planned.plates : undefined} />
      </div>
      <div className={`${layout.scrolled} ${css.side}`} tabIndex={-1}>
        <header>
          {shop && <p className={text.note}>{shop.name}</p>}
          <h2 id="proof-approve" className={css.title}>
            {design.title || t('proof.untitled')}
          </h2>
          {who !== '' && <p className={text.soft}>{t('proof.approve.for', { who })}</p>}
        </header>
        {standing.kind === 'approved' && done && <ApprovedNote standing={standing} />}
        <section className={layout.block} aria-labelledby="proof-texts">
          <h3 id="proof-texts">{t('proof.texts.title')}</h3>
          <TextsToRead />
        </section>
        <section className={layout.block} aria-labelledby="proof-made">
          <h3 id="proof-made">{t('proof.made.title')}</h3>
          <WhatIsMade planned={planned} />
        </section>
        <section className={layout.block} aria-labelledby="proof-price">
          <h3 id="proof-price">{t('proof.price.title')}</h3>
          <PriceOf design={design} planned={planned} name={design.title} />
        </section>
        <section className={layout.block} aria-labelledby="proof-care">
          <h3 id="proof-care">{t('take.cautions')}</h3>
          <Cautions />
        </section>
        <FindingsToAccept planned={planned} fingerprint={fingerprint} />
        {!done && <ApproveForm planned={planned} fingerprint={fingerprint} />}
      </div>
    </section>
  );
}
