import { Button } from '../ui/Button.tsx';
import { t } from '../words/t.ts';
import css from './OtherVerdict.module.css';
import { useCurrentPlate, useDesign, usePage, usePlates } from '../page/page-context.ts';

const RANK = { ready: 0, look: 1, stop: 2 };

/** Says when another plate of the order fares worse than the one looked at, and leads to it. */
export function OtherVerdict() {
  const { ui } = usePage();
  const design = useDesign();
  const { spec, plate } = useCurrentPlate();
  const plates = usePlates((s) => s.plates);
  if (plate === undefined) return null;
  let worst: { readonly id: string; readonly name: string; readonly verdict: 'look' | 'stop' } | undefined;
  for (const { id, name } of design.plates) {
    const verdict = plates[id]?.verdict ?? 'ready';
    if (id === spec.id || verdict === 'ready' || RANK[verdict] <= RANK[worst?.verdict ?? plate.verdict]) continue;
    worst = { id, name, verdict };
  }
  if (worst === undefined) return null;
  const { id, name, verdict } = worst;
  return (
    <Button
      kind="quiet"
      className={css.other}
      onClick={() => ui.getState().set({ plateId: id, litFinding: undefined, findingsOpen: true, view: 'plate' })}
    >
      {t(`verdict.other.${verdict}`, { plate: name })}
    </Button>
  );
}
