import { useId, useState } from 'react';
import type { Design } from '../../../geometry/design/schema.ts';
import { usePage } from '../../page/page-context.ts';
import { Choice } from '../../ui/fields/Choice.tsx';
import { useAnswer } from '../../ui/use-answer.ts';
import { t } from '../../words/t.ts';
import type { Differed } from '../../worker/plate-api.ts';
import text from '../../ui/text.module.css';
import css from './DifferencePicture.module.css';
import { plateKey } from '../../handover/price/plate-key.ts';

interface DifferencePictureProps {
  readonly before: Design;
  readonly after: Design;
  readonly titles: { readonly before: string; readonly after: string };
}

/** A plate that both have: what only the one cuts away, what only the other, each with a colour and a hatching of its own. */
export function DifferencePicture({ before, after, titles }: DifferencePictureProps) {
  const { client } = usePage();
  const shared = after.plates.filter((p) => before.plates.some((b) => b.id === p.id));
  const [chosen, setChosen] = useState<string | undefined>();
  const plate = shared.find((p) => p.id === chosen) ?? shared[0];
  const plateId = plate?.id;
  const about = plateId && `${plateKey(before, plateId)}\n${plateKey(after, plateId)}`;
  const differed = useAnswer(about, () => client.differ(before, after, plateId ?? ''))?.answer;
  if (plate === undefined) return <p className={text.soft}>{t('proof.compare.noPlate')}</p>;
  return (
    <figure className={css.figure}>
      {shared.length > 1 && (
        <Choice
          legend={t('page.plates.legend')}
          quiet
          value={plate.id}
          options={shared.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setChosen}
        />
      )}
      {differed === undefined ? (
        <p className={text.soft} role="status">
          {t('proof.working')}
        </p>
      ) : 'problem' in differed ? (
        <p className={text.bad}>{t(differed.problem)}</p>
      ) : (
        <Drawing differed={differed} titles={titles} />
      )}
    </figure>
  );
}

interface DrawingProps {
  readonly differed: Exclude<Differed, { readonly problem: unknown }>;
  readonly titles: { readonly before: string; readonly after: string };
}

function Drawing({ differed, titles }: DrawingProps) {
  const { beforeMm, afterMm, after, onlyBefore, onlyAfter } = differed;
  const id = useId();
  const half = (Math.max(beforeMm, afterMm) / 2) * 1.02;
  const same = onlyBefore === '' && onlyAfter === '' && beforeMm === afterMm;
  // hatching is as wide on every plate as the eye sees it
  const step = half / 45;
  return (
    <>
      <svg
        viewBox={`${-half} ${-half} ${2 * half} ${2 * half}`}
        className={css.drawing}
        role="img"
        aria-label={t(same ? 'proof.compare.sameLabel' : 'proof.compare.label')}
      >
        <defs>
          <Hatch id={`${id}-was`} step={step} turn={45} className={css.was} />
          <Hatch id={`${id}-is`} step={step} turn={-45} className={css.is} />
        </defs>
        <circle r={afterMm / 2} className={css.metal} />
        {beforeMm !== afterMm && <circle r={beforeMm / 2} className={css.wasRim} />}
        <path d={after} fillRule="evenodd" className={css.cut} />
        <path d={onlyBefore} fillRule="evenodd" fill={`url(#${id}-was)`} className={css.wasEdge} />
        <path d={onlyAfter} fillRule="evenodd" fill={`url(#${id}-is)`} className={css.isEdge} />
      </svg>
      <figcaption className={css.legend}>
        {same ? (
          t('proof.compare.sameCut')
        ) : (
          <>
            <LegendRow turn={45} className={css.was} words={t('proof.compare.only', { name: titles.before })} />
            <LegendRow turn={-45} className={css.is} words={t('proof.compare.only', { name: titles.after })} />
          </>
        )}
      </figcaption>
    </>
  );
}

interface HatchProps {
  readonly id: string;
  readonly step: number;
  readonly turn: number;
  readonly className: string | undefined;
}

function Hatch({ id, step, turn, className }: HatchProps) {
  return (
    <pattern
      id={id}
      width={step}
      height={step}
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${turn})`}
      className={className}
    >
      <rect width={step} height={step} className={css.ground} />
      <rect width={step * 0.5} height={step} className={css.stripe} />
    </pattern>
  );
}

function LegendRow({ turn, className, words }: { turn: number; className: string | undefined; words: string }) {
  const id = useId();
  return (
    <span className={css.row}>
      <svg viewBox="0 0 28 16" width="28" height="16" aria-hidden>
        <defs>
          <Hatch id={id} step={5} turn={turn} className={className} />
        </defs>
        <rect width="28" height="16" fill={`url(#${id})`} />
      </svg>
      {words}
    </span>
  );
}
