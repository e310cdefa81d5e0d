import type { Stock } from '../design/schema.ts';
import type { Finding, Mend } from '../findings.ts';
import { inMm, labelled, named, said, say, sheetWords } from '../words/say.ts';
import type { Wording } from '../words/wording.ts';
import { materialById, MATERIALS, processFit, type Material } from './materials.ts';
import { PROCESSES, processById, type Process } from './processes.ts';

/** Best first: what to offer when the chosen process cannot do it. */
const PREFERRED = ['fibre-laser', 'co2-laser', 'water-jet', 'router', 'plasma'];

/** What is wrong with a stock whatever the plate: unknown names, material and process, thickness, torch. */
export function checkStock(stock: Stock): Finding[] {
  const material = materialById(stock.material);
  const process = processById(stock.process);
  const findings: Finding[] = [];
  if (!material) {
    findings.push(
      finding(
        'unknown-material',
        'stop',
        said('findings.unknownMaterial', { material: stock.material, known: MATERIALS.map(materialWords) }),
        {
          ...labelled('mends.useMaterial', { material: named('materials.stainless-304.name', '304 stainless steel') }),
          change: { kind: 'set-stock', material: 'stainless-304' },
        },
      ),
    );
  }
  if (!process) {
    findings.push(
      finding(
        'unknown-process',
        'stop',
        said('findings.unknownProcess', { process: stock.process, known: PROCESSES.map(processWords) }),
        mendProcess(material, stock),
      ),
    );
  }
  if (material && process) findings.push(...checkPair(material, process, stock));
  if (material && stock.use === 'torch') findings.push(...checkTorch(material));
  return findings;
}

function checkPair(material: Material, process: Process, stock: Stock): Finding[] {
  const fit = processFit(material, process.id);
  const pair = { material: materialWords(material), process: processWords(process) };
  if (fit.grade === 'never') {
    return [
      finding(
        'material-unfit-for-process',
        'stop',
        said('findings.materialUnfit', { ...pair, reason: say(`reasons.${fit.why}`) }),
        mendProcess(material, stock),
      ),
    ];
  }
  const findings: Finding[] = [];
  if (fit.grade === 'poor') {
    findings.push(
      finding(
        'material-poor-for-process',
        'look',
        said('findings.materialPoor', { ...pair, reason: say(`reasons.${fit.why}`) }),
        mendProcess(material, stock),
      ),
    );
  }
  const range = process.thicknessMm[material.family];
  if (range && (stock.thicknessMm < range.least || stock.thicknessMm > range.most)) {
    const thin = stock.thicknessMm < range.least;
    findings.push({
      ...finding(
        'thickness-unfit-for-process',
        'stop',
        said(thin ? 'findings.thicknessThin' : 'findings.thicknessThick', {
          thickness: inMm(stock.thicknessMm, 2),
          process: processWords(process),
          least: inMm(range.least, 2),
          most: inMm(range.most, 2),
        }),
        mendThickness(material, range) ?? mendProcess(material, stock),
      ),
      measuredMm: stock.thicknessMm,
      limitMm: thin ? range.least : range.most,
    });
  }
  return findings;
}

function checkTorch(material: Material): Finding[] {
  const { torch } = material;
  if (torch.grade === 'yes') return [];
  const never = torch.grade === 'never';
  return [
    finding(
      never ? 'material-unfit-for-torch' : 'material-poor-for-torch',
      never ? 'stop' : 'look',
      said(never ? 'findings.torchNever' : 'findings.torchPoor', {
        material: materialWords(material),
        reason: say(`reasons.${torch.why}`),
      }),
      { ...labelled('mends.paint'), change: { kind: 'set-stock', use: 'paint' } },
    ),
  ];
}

function mendProcess(material: Material | undefined, stock: Stock): Finding['mend'] {
  for (const id of PREFERRED) {
    const process = processById(id);
    if (!process || id === stock.process) continue;
    if (material) {
      const range = process.thicknessMm[material.family];
      const takes = range && stock.thicknessMm >= range.least && stock.thicknessMm <= range.most;
      if (processFit(material, id).grade !== 'yes' || !takes) continue;
    }
    return {
      ...labelled('mends.cutBy', { process: processWords(process) }),
      change: { kind: 'set-stock', process: id } satisfies Mend,
    };
  }
  return undefined;
}

/** The thinnest usual sheet that the process takes. */
function mendThickness(material: Material, range: { least: number; most: number }): Finding['mend'] {
  const sheet = material.thicknesses.find((s) => s.mm >= range.least && s.mm <= range.most);
  return (
    sheet && {
      ...labelled('mends.sheet', { sheet: sheetWords(sheet) }),
      change: { kind: 'set-stock', thicknessMm: sheet.mm } satisfies Mend,
    }
  );
}

function finding(
  code: string,
  severity: Finding['severity'],
  sentence: Pick<Finding, 'sentence' | 'words'>,
  mend: Finding['mend'],
): Finding {
  const base = { code, severity, place: { kind: 'plate' }, elementIds: [], ...sentence } as const;
  return mend ? { ...base, mend } : base;
}

function materialWords({ id, name }: Material): Wording {
  return named(`materials.${id}.name`, name);
}

function processWords({ id, name }: Process): Wording {
  return named(`processes.${id}.name`, name);
}
