import { showFingerprint } from '../../../geometry/design/show-fingerprint.ts';
import { visible } from '../../../geometry/design/visible.ts';
import { useState } from 'react';
import { revisionDesign, whyNoRevision } from '../../../geometry/approval/revisions.ts';
import { sameFingerprint } from '../../../geometry/approval/same-fingerprint.ts';
import type { Revision } from '../../../geometry/design/schema.ts';
import { bringBack, forgetRevisions, keepRevision } from '../../state/actions/agreed/agree.ts';
import { useAct, useDesign, usePage } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { SelectField } from '../../ui/fields/SelectField.tsx';
import { refusalWords } from '../../words/say/finding-words.ts';
import { TextField } from '../../ui/fields/TextField.tsx';
import { t } from '../../words/t.ts';
import { useDone } from '../controls/use-done.tsx';
import { ComparedDesigns } from './ComparedDesigns.tsx';
import { momentNow } from '../state/now.ts';
import { momentWords } from '../../words/say/moment-words.ts';
import text from '../../ui/text.module.css';
import css from './RevisionsPart.module.css';
import { useFingerprint } from '../state/use-designs.ts';

/** As it is now, among the letters of the revisions. */
const NOW = '';

/** The design as it was, letter by letter: kept with a note, held against another, brought back. */
export function RevisionsPart() {
  const design = useDesign();
  const fingerprint = useFingerprint();
  const act = useAct();
  const { tell, line } = useDone();
  const revisions = design.revisions ?? [];
  return (
    <section className={css.part} aria-labelledby="proof-revisions">
      <div className={css.list}>
        <h2 id="proof-revisions" className={text.title}>
          {t('proof.revisions.title')}
        </h2>
        {revisions.length === 0 && <p className={text.soft}>{t('proof.revisions.none')}</p>}
        <ol className={css.rows}>
          {revisions.toReversed().map((revision) => (
            <RevisionRow
              key={revision.letter}
              revision={revision}
              isNow={sameFingerprint(revision.fingerprint, fingerprint)}
              onBack={() => {
                const { letter } = revision;
                const why = t('proof.revisions.before', { letter });
                act((d) => bringBack(d, letter, { at: momentNow(), why, fingerprint }));
                tell(t('proof.revisions.broughtBack', { letter }));
              }}
            />
          ))}
        </ol>
        {line}
        <Keep onDone={tell} />
      </div>
      {revisions.length > 0 && <Compare revisions={revisions} />}
    </section>
  );
}

interface RevisionRowProps {
  readonly revision: Revision;
  readonly isNow: boolean;
  readonly onBack: () => void;
}

function RevisionRow({ revision, isNow, onBack }: RevisionRowProps) {
  const { letter, at, why, fingerprint, approval } = revision;
  return (
    <li className={css.row}>
      <span className={css.letter} aria-hidden>
        {letter}
      </span>
      <div className={css.facts}>
        <h3>
          <span className="sr-only">{t('proof.revisions.letter', { letter })} </span>
          {why || (approval ? t('proof.approved.by', { name: visible(approval.name) }) : t('proof.revisions.noNote'))}
        </h3>
        <p className={text.note}>
          {momentWords(at)} · <span className={css.print}>{showFingerprint(fingerprint)}</span>
        </p>
        {approval && why !== '' && (
          <p className={css.approved}>
            {t('proof.standing.approved', { name: visible(approval.name), at: momentWords(approval.at) })}
          </p>
        )}
      </div>
      {isNow ? (
        <span className={text.note}>{t('proof.revisions.isNow')}</span>
      ) : (
        <Button kind="plain" aria-label={t('proof.revisions.bringBack', { letter })} onClick={onBack}>
          {t('proof.revisions.back')}
        </Button>
      )}
    </li>
  );
}

function Keep({ onDone }: { readonly onDone: (sentence: string) => void }) {
  const design = useDesign();
  const fingerprint = useFingerprint();
  const { own } = usePage();
  const act = useAct();
  const [why, setWhy] = useState('');
  const refused = whyNoRevision(design);
  return (
    <form
      className={css.keep}
      onSubmit={(e) => {
        e.preventDefault();
        const before = design.revisions?.length ?? 0;
        act((d) => {
          const change = keepRevision(d, { at: momentNow(), why, fingerprint });
          const made = change.design.revisions ?? [];
          const letter = made.at(-1)?.letter ?? '';
          onDone(
            made.length > before ? t('proof.revisions.kept', { letter }) : t('proof.revisions.keptAlready', { letter }),
          );
          return change;
        });
        setWhy('');
      }}
    >
      <TextField
        label={t('proof.revisions.note')}
        value={why}
        maxLength={200}
        placeholder={t('proof.revisions.noteExample')}
        onChange={setWhy}
      />
      <Button kind="plain" type="submit" disabled={refused !== undefined}>
        {t('proof.revisions.keep')}
      </Button>
      {refused && (
        <>
          <p className={css.refused}>{refusalWords(refused)}</p>
          <Button
            kind="plain"
            onClick={() => {
              own.begin(forgetRevisions);
              onDone(t('proof.revisions.copied'));
            }}
          >
            {t('proof.revisions.copy')}
          </Button>
        </>
      )}
    </form>
  );
}

function Compare({ revisions }: { readonly revisions: readonly Revision[] }) {
  const design = useDesign();
  const [before, setBefore] = useState(revisions.at(-1)?.letter ?? NOW);
  const [after, setAfter] = useState(NOW);
  const designOf = (letter: string) =>
    revisions.some((r) => r.letter === letter) ? revisionDesign(design, letter) : design;
  const nameOf = (letter: string): string =>
    letter === NOW ? t('proof.revisions.nowName') : t('proof.revisions.letter', { letter });
  const options = [...revisions.map((r) => r.letter), NOW].map((value) => ({ value, label: nameOf(value) }));
  return (
    <section className={css.compare} aria-labelledby="proof-compare">
      <h2 id="proof-compare" className={text.title}>
        {t('proof.compare.title')}
      </h2>
      <div className={css.choices}>
        <SelectField label={t('proof.compare.before')} value={before} options={options} onChange={setBefore} />
        <SelectField label={t('proof.compare.after')} value={after} options={options} onChange={setAfter} />
      </div>
      {before === after ? (
        <p className={text.soft}>{t('proof.compare.same')}</p>
      ) : (
        <ComparedDesigns
          before={designOf(before)}
          after={designOf(after)}
          titles={{ before: nameOf(before), after: nameOf(after) }}
        />
      )}
    </section>
  );
}
