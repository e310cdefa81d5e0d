import { showFingerprint } from '../../../geometry/design/show-fingerprint.ts';
import { visible } from '../../../geometry/design/visible.ts';
import { OctagonAlert } from 'lucide-react';
import { useState } from 'react';
import { whyNoRevision } from '../../../geometry/approval/revisions.ts';
import type { Standing } from '../../../geometry/approval/standing.ts';
import { bringBack } from '../../state/actions/agreed/agree.ts';
import { useAct, useDesign } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { t } from '../../words/t.ts';
import css from './ChangedNote.module.css';
import { ComparedDesigns } from './ComparedDesigns.tsx';
import { momentNow } from '../state/now.ts';
import { momentWords } from '../../words/say/moment-words.ts';
import type { ProofPart } from '../state/proof-store.ts';
import { useFingerprint } from '../state/use-designs.ts';

/** What is here is not what was approved: said loud, with what is different and the way back. */
export function ChangedNote({
  standing,
  part,
}: {
  readonly standing: Extract<Standing, { kind: 'changed' }>;
  readonly part: ProofPart;
}) {
  const design = useDesign();
  const fingerprint = useFingerprint();
  const act = useAct();
  // unfolded it covers half the page: another part is looked at without it
  const [openAt, setOpenAt] = useState<ProofPart>();
  const open = openAt === part;
  const { approval, letter, was } = standing;
  return (
    <section role="alert" className={css.note} aria-labelledby="proof-changed">
      <div className={css.line}>
        <OctagonAlert size={24} aria-hidden className={css.sign} />
        <div className={css.text}>
          <h2 id="proof-changed">{t('proof.changed.title')}</h2>
          <p>
            {t('proof.changed.says', {
              name: visible(approval.name),
              at: momentWords(approval.at),
              approved: showFingerprint(approval.fingerprint),
              now: showFingerprint(fingerprint),
            })}
          </p>
        </div>
        <div className={css.buttons}>
          {was && (
            <Button kind="plain" aria-expanded={open} onClick={() => setOpenAt(open ? undefined : part)}>
              {t(open ? 'proof.changed.hide' : 'proof.changed.show')}
            </Button>
          )}
          {was && letter !== undefined && whyNoRevision(design) === undefined && (
            <Button
              kind="plain"
              onClick={() =>
                act((d) =>
                  bringBack(d, letter, { at: momentNow(), why: t('proof.revisions.before', { letter }), fingerprint }),
                )
              }
            >
              {t('proof.changed.back', { letter })}
            </Button>
          )}
        </div>
      </div>
      {was && open && (
        <div className={css.open}>
          <ComparedDesigns
            before={was}
            after={design}
            titles={{ before: t('proof.changed.approved'), after: t('proof.revisions.nowName') }}
            prints={{ before: approval.fingerprint, after: fingerprint }}
          />
        </div>
      )}
    </section>
  );
}
