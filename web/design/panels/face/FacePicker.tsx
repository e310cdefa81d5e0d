import { useId, useMemo, useState } from 'react';
import { FACES, type FaceEntry } from '../../../../fonts/catalogue.ts';
import { isText } from '../../../../geometry/design/kinds.ts';
import { facesThatSuit, mixedKinds } from '../../../page/faces-that-suit.ts';
import { useDesign } from '../../../page/page-context.ts';
import { Button } from '../../../ui/Button.tsx';
import { t } from '../../../words/t.ts';
import css from './FacePicker.module.css';
import { FaceSample } from '../../../page/FaceSample.tsx';
import { OwnFaceField } from './OwnFaceField.tsx';
import { useFacesThatFail } from './use-faces-that-fail.ts';
import { faceSuits } from '../../../words/say/record-words.ts';

interface FacePickerProps {
  /** The faces that are in use for what is being set. */
  readonly faces: ReadonlySet<string>;
  readonly sample: string;
  readonly elementId: string | undefined;
  readonly onPick: (faceId: string) => void;
}

/** So many are offered at first. */
const FEW = 10;
const NONE: ReadonlySet<string> = new Set();

/** Some faces that suit these words and hold at this size, then all by kind; each drawn with the customer's own words. */
export function FacePicker({ faces, sample, elementId, onPick }: FacePickerProps) {
  const design = useDesign();
  const name = useId();
  const only = faces.size === 1 ? [...faces][0] : undefined;
  const [all, setAll] = useState(false);
  const words = design.elements
    .filter((e) => isText(e) && (elementId === undefined || e.id === elementId))
    .map((e) => ('text' in e ? e.text : ''))
    .join(' ');
  // the order stays while one chooses among them
  const [usedFirst] = useState(faces);
  const candidates = useMemo(() => {
    const suit = mixedKinds(facesThatSuit(FACES, words, NONE));
    const used = FACES.filter(({ id }) => usedFirst.has(id));
    return [...used, ...suit.filter(({ id }) => !usedFirst.has(id))];
  }, [words, usedFirst]);
  const ids = useMemo(() => candidates.map(({ id }) => id), [candidates]);
  const failed = useFacesThatFail(design, ids, FEW, elementId);
  const few = candidates.filter(({ id }) => !failed.has(id) || faces.has(id)).slice(0, FEW);

  const card = (id: string, title: string, suits: string | undefined, source: string) => (
    <li key={id}>
      <label className={css.card}>
        <input type="radio" name={name} className="sr-only" checked={id === only} onChange={() => onPick(id)} />
        <span className={css.inner} data-partly={(only === undefined && faces.has(id)) || undefined}>
          <FaceSample id={id} source={source} text={sample} />
          <span className={css.caption}>
            <span className={css.name}>{title}</span>
            {suits}
          </span>
        </span>
      </label>
    </li>
  );

  return (
    <div className={css.picker} role="radiogroup" aria-label={t('page.steps.look.title')}>
      {design.ownFaces.length > 0 && (
        <section>
          <h3 className={css.kind}>{t('look.kinds.own')}</h3>
          <ul>{design.ownFaces.map((f) => card(f.id, f.name, undefined, f.data))}</ul>
        </section>
      )}
      {!all && <ul>{few.map((f) => card(f.id, f.name, faceSuits(f), f.id))}</ul>}
      {!all && (
        <Button kind="plain" className={css.more} onClick={() => setAll(true)}>
          {t('look.more', { count: FACES.length })}
        </Button>
      )}
      {all &&
        byKind().map(([kind, entries]) => (
          <section key={kind}>
            <h3 className={css.kind}>{t(`look.kinds.${kind}`)}</h3>
            <ul>{entries.map((f) => card(f.id, f.name, faceSuits(f), f.id))}</ul>
          </section>
        ))}
      <OwnFaceField elementId={elementId} />
    </div>
  );
}

/** In the order of the catalogue. */
function byKind(): [FaceEntry['kind'], FaceEntry[]][] {
  const kinds = new Map<FaceEntry['kind'], FaceEntry[]>();
  for (const face of FACES) kinds.set(face.kind, [...(kinds.get(face.kind) ?? []), face]);
  return [...kinds];
}
