import { visible } from '../design/visible.ts';
import { STOCK_EN } from '../sentences/stock-en.ts';
import type { Refused, Wording } from '../sentences/wording.ts';
import type { Path, PlacedFault } from './file-faults.ts';
import type { StockFile } from './stock-schema.ts';

type FileMaterial = StockFile['materials'][number];
type FileProcess = StockFile['processes'][number];

/** What the schema cannot say: names that lead nowhere, and parts that speak against each other. The first, or none. */
export function contradictionIn(file: StockFile): PlacedFault | undefined {
  const { materials, processes, sheets, advice } = file;
  const known = { material: idsOf(materials), process: idsOf(processes) };
  const strange = (who: Wording, kind: keyof typeof known, ids: readonly string[]): Refused | undefined => {
    const missing = ids.find((id) => !known[kind].has(id));
    if (missing === undefined) return undefined;
    const key = kind === 'material' ? 'stockFile.materialUnknown' : 'stockFile.processUnknown';
    return STOCK_EN.refused(key, { who, id: visible(missing) });
  };
  return firstOf([
    ...(['materials', 'processes', 'sheets'] as const).map((list) => () => idTwice(file[list], list)),
    ...materials.flatMap((material, i) => {
      const at = ['materials', i];
      return [
        () => placed(at, strange(nameOf('stockFile.material', material), 'process', Object.keys(material.processes))),
        () => placed(at, materialFault(material, processes)),
      ];
    }),
    ...processes.flatMap((process, i) => {
      const at = ['processes', i];
      const cut = process.cutting.flatMap((c) => c.materials);
      return [
        () => placed(at, strange(nameOf('stockFile.process', process), 'material', cut)),
        () => placed(at, processFault(process)),
      ];
    }),
    ...sheets.map((sheet, i) => {
      const inside = [...(sheet.materials ?? []), ...(sheet.prices ?? []).map((p) => p.material)];
      return () => placed(['sheets', i], strange(nameOf('stockFile.sheet', sheet), 'material', inside));
    }),
    () => {
      const i = file.neverMeet.findIndex((n) => n.why === undefined && n.reason === undefined);
      return i < 0 ? undefined : placed(['neverMeet', i], STOCK_EN.refused('stockFile.meetingUnreasoned'));
    },
    () => {
      const who = STOCK_EN.say('stockFile.advice');
      return placed(
        ['advice'],
        strange(who, 'material', [...advice.paint, ...advice.torch]) ?? strange(who, 'process', [advice.process]),
      );
    },
  ]);
}

function placed(path: Path, refused: Refused | undefined): PlacedFault | undefined {
  return refused && { path, refused };
}

function idsOf(list: readonly { readonly id: string }[]): Set<string> {
  return new Set(list.map(({ id }) => id));
}

function nameOf(key: Parameters<typeof STOCK_EN.say>[0], { id }: { readonly id: string }): Wording {
  return STOCK_EN.say(key, { id: visible(id) });
}

function firstOf(faults: readonly (() => PlacedFault | undefined)[]): PlacedFault | undefined {
  for (const fault of faults) {
    const found = fault();
    if (found !== undefined) return found;
  }
  return undefined;
}

function idTwice(list: readonly { readonly id: string }[], what: string): PlacedFault | undefined {
  const i = list.findIndex(({ id }, at) => list.findIndex((other) => other.id === id) !== at);
  return i < 0
    ? undefined
    : placed([what, i], STOCK_EN.refused('stockFile.twice', { list: what, id: visible(list[i]!.id) }));
}

function materialFault(material: FileMaterial, processes: readonly FileProcess[]): Refused | undefined {
  const id = visible(material.id);
  if (material.gaugeSystem === undefined && material.thicknesses.some((t) => 'gauge' in t)) {
    return STOCK_EN.refused('stockFile.gaugeUnknown', { id });
  }
  for (const { grade, why, reason } of [material.torch, ...Object.values(material.processes)]) {
    const count = (why === undefined ? 0 : 1) + (reason === undefined ? 0 : 1);
    if (count !== (grade === 'yes' ? 0 : 1)) return STOCK_EN.refused('stockFile.reasonsWrong', { id, grade, count });
  }
  const without = processes.find((p) => {
    const grade = material.processes[p.id]?.grade;
    return grade !== undefined && grade !== 'never' && p.families[material.family] === undefined;
  });
  return (
    without &&
    STOCK_EN.refused('stockFile.familyMissing', { id: visible(without.id), material: id, family: material.family })
  );
}

function processFault(process: FileProcess): Refused | undefined {
  const id = visible(process.id);
  const thermal = process.kind === 'laser' || process.kind === 'plasma';
  if (!thermal && process.tolerance.standard === 'ISO 9013')
    return STOCK_EN.refused('stockFile.classForFlames', { id });
  for (const [family, part] of Object.entries(process.families)) {
    const { least = 0, most = 0 } = part?.thicknessMm ?? {};
    if (least > most) return STOCK_EN.refused('stockFile.thicknessTurned', { id, family, least, most });
  }
  const unsorted = process.cutting.some(({ rows }) =>
    rows.some((row, i) => i > 0 && row.thicknessMm <= rows[i - 1]!.thicknessMm),
  );
  return unsorted ? STOCK_EN.refused('stockFile.speedsUnsorted', { id }) : undefined;
}
