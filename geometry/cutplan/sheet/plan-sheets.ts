import type { NestedSheet } from '../../sheet/sheets.ts';
import type { CutPlan } from '../cut-plan.ts';
import { planSheet, type SheetWishes } from './plan-sheet.ts';
import type { CutPass, CutSettings, SheetPlan } from '../sheet-plan.ts';
import type { WitnessMark } from '../drift/witness.ts';

/** Plans of many sheets, one at a time as they are asked for; equal sheets are planned once. Marks are those of each sheet. */
export function* planSheets(
  sheets: readonly NestedSheet[],
  plans: ReadonlyMap<string, CutPlan>,
  settings: CutSettings,
  wishes: Omit<SheetWishes, 'marks'> = {},
  marksOf: (sheet: NestedSheet) => readonly WitnessMark[] = () => [],
): Generator<SheetPlan> {
  const known = new Map<string, { readonly sheet: NestedSheet; readonly plan: SheetPlan }>();
  for (const sheet of sheets) {
    const key = keyOf(sheet, wishes);
    const like = known.get(key);
    const plan = like
      ? renamePlates(like.plan, like.sheet, sheet)
      : planSheet(sheet, plans, settings, { ...wishes, marks: marksOf(sheet) });
    if (!like) known.set(key, { sheet, plan });
    yield plan;
  }
}

/** All that a plan depends on; plates by their place in the list. */
function keyOf({ widthMm, heightMm, gone, plates }: NestedSheet, { held, last }: SheetWishes): string {
  const numbers = new Map(plates.map((p, i) => [p.id, i]));
  const places = plates.map((p) => [p.wish, p.diameterMm, p.x, p.y, p.turnDeg, numbers.get(p.inside ?? '') ?? -1]);
  const own = [held, last].map((ids) => plates.map((p) => ownOf(ids, p.id)));
  return JSON.stringify([widthMm, heightMm, gone, places, own]);
}

/** Of passes or words those of one plate, without its name. */
function ownOf(ids: ReadonlySet<string> = new Set(), plate: string): string[] {
  const head = `${plate}/`;
  return [...ids].flatMap((id) => (id.startsWith(head) ? [id.slice(head.length)] : [])).sort();
}

/** The same plan for an equal sheet: only the plates have other names. */
function renamePlates(plan: SheetPlan, from: NestedSheet, to: NestedSheet): SheetPlan {
  const names = new Map(from.plates.map((p, i) => [p.id, to.plates[i]!.id]));
  const plate = (id: string): string => names.get(id) ?? id;
  const within = (id: string, own: string): string => `${plate(own)}${id.slice(own.length)}`;
  const owners = new Map(plan.passes.map((p) => [p.id, p.plate]));
  const pass = (id: string): string => (owners.has(id) ? within(id, owners.get(id)!) : id);
  return {
    ...plan,
    passes: plan.passes.map((p): CutPass => ({
      ...p,
      id: pass(p.id),
      plate: plate(p.plate),
      word: within(p.word, p.plate),
      after: p.after.map(pass),
    })),
    rapids: plan.rapids.map((r) => ({ ...r, from: pass(r.from), to: pass(r.to) })),
    slugs: plan.slugs.map((s) => ({ ...s, pass: pass(s.pass), plate: plate(s.plate) })),
    notes: plan.notes.map((n) => ({ ...n, plate: plate(n.plate) })),
  };
}
