import { visible } from '../design/visible.ts';
import type { StockFile } from './stock-schema.ts';

type FileMaterial = StockFile['materials'][number];
type FileProcess = StockFile['processes'][number];

/** What the schema cannot say: names that lead nowhere, and parts that speak against each other. The first, or none. */
export function contradictionIn(file: StockFile): string | undefined {
  const { materials, processes, sheets, advice } = file;
  const known = { material: new Set(materials.map((m) => m.id)), process: new Set(processes.map((p) => p.id)) };
  const strange = (kind: keyof typeof known, ids: readonly string[]): string | undefined => {
    const missing = ids.find((id) => !known[kind].has(id));
    return missing === undefined ? undefined : `the ${kind} ${quoted(missing)}, which is not in its list`;
  };
  return firstOf([
    () => idTwice(materials, 'materials') ?? idTwice(processes, 'processes') ?? idTwice(sheets, 'sheets'),
    ...materials.flatMap((material) => [
      () => about('material', material, strange('process', Object.keys(material.processes))),
      () => materialFault(material, processes),
    ]),
    ...processes.flatMap((process) => [
      () =>
        about(
          'process',
          process,
          strange(
            'material',
            process.cutting.flatMap((c) => c.materials),
          ),
        ),
      () => processFault(process),
    ]),
    ...sheets.map((sheet) => {
      const named = [...(sheet.materials ?? []), ...(sheet.prices ?? []).map((p) => p.material)];
      return () => about('sheet', sheet, strange('material', named));
    }),
    () =>
      file.neverMeet.some((n) => n.why === undefined && n.reason === undefined)
        ? 'a row of neverMeet has no reason. Give it "why" or "reason".'
        : undefined,
    () => {
      const named = strange('material', [...advice.paint, ...advice.torch]) ?? strange('process', [advice.process]);
      return named && `the advice speaks of ${named}.`;
    },
  ]);
}

function firstOf(faults: readonly (() => string | undefined)[]): string | undefined {
  for (const fault of faults) {
    const found = fault();
    if (found !== undefined) return found;
  }
  return undefined;
}

function about(what: string, { id }: { readonly id: string }, named: string | undefined): string | undefined {
  return named && `${what} ${quoted(id)} speaks of ${named}.`;
}

function idTwice(list: readonly { readonly id: string }[], what: string): string | undefined {
  const twice = list.find(({ id }, i) => list.findIndex((other) => other.id === id) !== i);
  return twice && `two ${what} carry the same id, ${quoted(twice.id)}. Give one of them another.`;
}

function materialFault(material: FileMaterial, processes: readonly FileProcess[]): string | undefined {
  const name = quoted(material.id);
  if (material.gaugeSystem === undefined && material.thicknesses.some((t) => 'gauge' in t)) {
    return `material ${name} has a gauge but no gaugeSystem: 16 gauge is another thickness in stainless, carbon and aluminium.`;
  }
  for (const fit of [material.torch, ...Object.values(material.processes)]) {
    const grounds = (fit.why === undefined ? 0 : 1) + (fit.reason === undefined ? 0 : 1);
    if (grounds !== (fit.grade === 'yes' ? 0 : 1)) {
      return `material ${name} says "${fit.grade}" with ${grounds} reasons. "poor" and "never" need one of "why" and "reason", "yes" needs none.`;
    }
  }
  const without = processes.find((p) => {
    const grade = material.processes[p.id]?.grade;
    return grade !== undefined && grade !== 'never' && p.families[material.family] === undefined;
  });
  return (
    without &&
    `process ${quoted(without.id)} may cut ${name}, but its families have no part "${material.family}". Add it, with thickness and bridge.`
  );
}

function processFault(process: FileProcess): string | undefined {
  const name = quoted(process.id);
  const thermal = process.kind === 'laser' || process.kind === 'plasma';
  if (!thermal && process.tolerance.standard === 'ISO 9013') {
    return `process ${name} has a class of ISO 9013, which is for thermal cutting only. Give it a class of ISO 2768.`;
  }
  for (const [family, part] of Object.entries(process.families)) {
    const { least = 0, most = 0 } = part?.thicknessMm ?? {};
    if (least > most) return `process ${name} cuts ${family} from ${least} to ${most} mm. Change the two about.`;
  }
  const unsorted = process.cutting.some(({ rows }) =>
    rows.some((row, i) => i > 0 && row.thicknessMm <= rows[i - 1]!.thicknessMm),
  );
  return unsorted
    ? `process ${name} has speeds whose rows do not grow in thickness. Sort them, each thickness once.`
    : undefined;
}

function quoted(id: string): string {
  return `"${visible(id)}"`;
}
