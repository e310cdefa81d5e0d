import { visible } from '../../../geometry/design/visible.ts';
import { useId, useState } from 'react';
import { acceptedOf, isAccepted, mayBeAccepted } from '../../../geometry/approval/acceptances.ts';
import type { Acceptance } from '../../../geometry/design/schema.ts';
import { acceptFinding } from '../../state/actions/agreed/agree.ts';
import { useAct, useDesign, useUi } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { findingWords } from '../../words/say/finding-words.ts';
import { TextField } from '../../ui/fields/TextField.tsx';
import { VerdictMark } from '../../ui/VerdictMark.tsx';
import { t } from '../../words/t.ts';
import layout from '../../ui/layout.module.css';
import text from '../../ui/text.module.css';
import css from './FindingsToAccept.module.css';
import { gatherFindings, type Gathered } from '../state/gather-findings.ts';
import { momentNow } from '../state/now.ts';
import { momentWords } from '../../words/say/moment-words.ts';
import type { PlannedDesign } from '../state/planned-design.ts';

interface FindingsToAcceptProps {
  readonly planned: PlannedDesign;
  readonly fingerprint: string;
}

/** What stops the cut, with the reason; what is worth a look, to be accepted by name. */
export function FindingsToAccept({ planned, fingerprint }: FindingsToAcceptProps) {
  const design = useDesign();
  const titleId = useId();
  if (planned.state !== 'ready') return null;
  const all = gatherFindings(planned.plates.map(({ plate }) => plate)).filter(
    ({ finding }) => finding.severity !== 'note' || NOT_MEASURED.has(finding.code),
  );
  if (all.length === 0) return null;
  const accepted = acceptedOf(design, fingerprint);
  const letBe = ({ finding, on }: Gathered): Acceptance | undefined =>
    on.every(({ plateId }) => isAccepted(finding, plateId, accepted))
      ? accepted.find((a) => a.code === finding.code && a.plate === on[0]?.plateId)
      : undefined;
  const open = all.filter((g) => mayBeAccepted(g.finding) && !letBe(g));
  return (
    <section className={layout.block} aria-labelledby={titleId}>
      <h3 id={titleId}>{t('proof.findings.title')}</h3>
      <ul className={css.list}>
        {all.map((gathered, i) => (
          <FindingRow key={`${gathered.finding.code} ${i}`} gathered={gathered} accepted={letBe(gathered)} />
        ))}
      </ul>
      {open.length > 0 && <AcceptAll open={open} fingerprint={fingerprint} />}
    </section>
  );
}

/** Only a note while one designs; whoever approves says that the size is right. */
const NOT_MEASURED: ReadonlySet<string> = new Set(['head-not-measured', 'side-not-measured']);

interface FindingRowProps {
  readonly gathered: Gathered;
  readonly accepted: Acceptance | undefined;
}

function FindingRow({ gathered: { finding, on }, accepted }: FindingRowProps) {
  const unit = useUi((s) => s.unit);
  return (
    <li className={css.row}>
      <VerdictMark verdict={accepted ? 'ready' : finding.severity === 'stop' ? 'stop' : 'look'} silent />
      <div>
        <p>
          {on.map(({ name }) => name).join(', ')}: {findingWords(finding, unit)}
        </p>
        {accepted && (
          <p className={text.note}>
            {t('proof.findings.by', { who: visible(accepted.who), at: momentWords(accepted.at) })}
          </p>
        )}
      </div>
    </li>
  );
}

interface AcceptAllProps {
  readonly open: readonly Gathered[];
  readonly fingerprint: string;
}

/** Whoever knows better says so by name, for all that is open at once. */
function AcceptAll({ open, fingerprint }: AcceptAllProps) {
  const act = useAct();
  const [who, setWho] = useState('');
  return (
    <div className={css.accept}>
      <TextField label={t('proof.findings.who')} value={who} maxLength={200} onChange={setWho} />
      <Button
        kind="plain"
        disabled={who.trim() === ''}
        onClick={() =>
          act((d) => {
            const at = momentNow();
            const each = open.flatMap(({ finding, on }) => on.map(({ plateId }) => ({ finding, plate: plateId })));
            const design = each.reduce((so, one) => acceptFinding(so, { ...one, who, at, fingerprint }).design, d);
            return { design, undo: 'step' };
          })
        }
      >
        {t('proof.findings.accept', { count: open.length })}
      </Button>
    </div>
  );
}
