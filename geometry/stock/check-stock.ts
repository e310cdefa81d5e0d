import type { Stock } from '../design/schema.ts';
import type { Finding, Mend } from '../findings.ts';
import { inMm, labelled, said, sheetWords } from '../sentences/say.ts';
import { materialWords, processWords, reasonOf } from './record-key.ts';
import { type Material, materialIn, type Process, processFit, processIn, type StockBook } from './stock-book.ts';

/** What is wrong with a stock whatever the plate: unknown names, material and process, thickness, torch. */
export function checkStock(stock: Stock, book: StockBook): Finding[] {
  const material = materialIn(book, stock.material);
  const process = processIn(book, stock.process);
  const findings: Finding[] = [];
  if (!material) {
    findings.push(
      finding(
        'unknown-material',
        'stop',
        said('findings.unknownMaterial', { material: stock.material, known: book.materials.map(materialWords) }),
        mendMaterial(book),
      ),
    );
  }
  if (!process) {
    findings.push(
      finding(
        'unknown-process',
        'stop',
        said('findings.unknownProcess', { process: stock.process, known: book.processes.map(processWords) }),
        mendProcess(material, stock, book),
      ),
    );
  }
  if (material && process) findings.push(...checkPair(material, process, stock, book));
  if (material && stock.use === 'torch') findings.push(...checkTorch(material));
  return findings;
}

function checkPair(material: Material, process: Process, stock: Stock, book: StockBook): Finding[] {
  const fit = processFit(material, process.id);
  const pair = { material: materialWords(material), process: processWords(process) };
  if (fit.grade === 'never') {
    return [
      finding(
        'material-unfit-for-process',
        'stop',
        said('findings.materialUnfit', { ...pair, reason: reasonOf(fit) }),
        mendProcess(material, stock, book),
      ),
    ];
  }
  const findings: Finding[] = [];
  if (fit.grade === 'poor') {
    findings.push(
      finding(
        'material-poor-for-process',
        'look',
        said('findings.materialPoor', { ...pair, reason: reasonOf(fit) }),
        mendProcess(material, stock, book),
      ),
    );
  }
  const range = process.families[material.family]?.thicknessMm;
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
        mendThickness(material, range) ?? mendProcess(material, stock, book),
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
        reason: reasonOf(torch),
      }),
      { ...labelled('mends.paint'), change: { kind: 'set-stock', use: 'paint' } },
    ),
  ];
}

function mendMaterial({ materials: [material] }: StockBook): Finding['mend'] {
  return (
    material && {
      ...labelled('mends.useMaterial', { material: materialWords(material) }),
      change: { kind: 'set-stock', material: material.id } satisfies Mend,
    }
  );
}

/** The first of the book, which has the better one first, that cuts this sheet. */
function mendProcess(material: Material | undefined, stock: Stock, book: StockBook): Finding['mend'] {
  for (const process of book.processes) {
    if (process.id === stock.process) continue;
    if (material) {
      const range = process.families[material.family]?.thicknessMm;
      const takes = range && stock.thicknessMm >= range.least && stock.thicknessMm <= range.most;
      if (processFit(material, process.id).grade !== 'yes' || !takes) continue;
    }
    return {
      ...labelled('mends.cutBy', { process: processWords(process) }),
      change: { kind: 'set-stock', process: process.id } satisfies Mend,
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
