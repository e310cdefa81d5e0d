import type { Stock } from '../design/schema.ts';
import type { Finding, Mend } from '../findings.ts';
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
    const known = MATERIALS.map((m) => m.name).join(', ');
    findings.push(
      finding(
        'unknown-material',
        'stop',
        `Nobody here knows the material "${stock.material}". Choose one of: ${known}.`,
        {
          label: 'Use 304 stainless steel',
          change: { kind: 'set-stock', material: 'stainless-304' },
        },
      ),
    );
  }
  if (!process) {
    const known = PROCESSES.map((p) => p.name).join(', ');
    findings.push(
      finding(
        'unknown-process',
        'stop',
        `Nobody here knows the process "${stock.process}". Choose one of: ${known}.`,
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
  if (fit.grade === 'never') {
    return [
      finding(
        'material-unfit-for-process',
        'stop',
        `${material.name} must not go on this machine (${process.name}): ${fit.reason}.`,
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
        `${material.name} cuts poorly this way (${process.name}): ${fit.reason}. Ask the shop first, or choose another process.`,
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
        `Sheet of ${mm(stock.thicknessMm)} is too ${thin ? 'thin' : 'thick'} for this process (${process.name}), which takes ${mm(range.least)} to ${mm(range.most)} of it. Choose another thickness or process.`,
        mendThickness(material, range) ?? mendProcess(material, stock),
      ),
      measuredMm: stock.thicknessMm,
      limitMm: thin ? range.least : range.most,
    });
  }
  return findings;
}

function checkTorch(material: Material): Finding[] {
  if (material.torch.grade === 'yes') return [];
  const never = material.torch.grade === 'never';
  return [
    finding(
      never ? 'material-unfit-for-torch' : 'material-poor-for-torch',
      never ? 'stop' : 'look',
      never
        ? `${material.name} must never meet a torch: ${material.torch.reason}. Use paint, or choose stainless steel.`
        : `${material.name} stands a torch only briefly: ${material.torch.reason}. Use paint, or choose stainless steel.`,
      { label: 'Use it with paint', change: { kind: 'set-stock', use: 'paint' } },
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
    return { label: `Cut it by ${process.name}`, change: { kind: 'set-stock', process: id } satisfies Mend };
  }
  return undefined;
}

/** The thinnest usual sheet that the process takes. */
function mendThickness(material: Material, range: { least: number; most: number }): Finding['mend'] {
  const sheet = material.thicknesses.find((s) => s.mm >= range.least && s.mm <= range.most);
  return (
    sheet && { label: `Use ${sheet.label} sheet`, change: { kind: 'set-stock', thicknessMm: sheet.mm } satisfies Mend }
  );
}

function finding(code: string, severity: Finding['severity'], sentence: string, mend: Finding['mend']): Finding {
  const base = { code, severity, place: { kind: 'plate' }, elementIds: [], sentence } as const;
  return mend ? { ...base, mend } : base;
}

function mm(value: number): string {
  return `${Number(value.toFixed(2))} mm`;
}
