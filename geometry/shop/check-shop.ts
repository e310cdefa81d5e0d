import { visible } from '../design/visible.ts';
import type { Path, PlacedFault } from '../stock/file-faults.ts';
import { SHOP_EN } from '../sentences/shop-en.ts';
import type { KeyOf } from '../sentences/make-say.ts';
import type { WordValues } from '../sentences/wording.ts';
import { readLogoPath, readLogoPicture } from './logo.ts';
import type { ShopFile } from './shop-schema.ts';

/** What a shop's prices are held against: a stock file, or a book. */
export interface ShopStock {
  readonly currency: string;
  readonly materials: readonly { readonly id: string }[];
  readonly processes: readonly { readonly id: string }[];
}

type Prices = NonNullable<ShopFile['prices']>;
type Row = Prices['plates'][number] | NonNullable<Prices['cutting']>[number];

/** More dots than this on a side serve no paper. */
const MOST_LOGO_DOTS = 4000;

/**
 * What the schema cannot say: parts of a shop file that speak against each other or against the stock it is used with
 * (its own, where it holds one). The first, or none.
 */
export function checkShop(file: ShopFile, stock: ShopStock | undefined = file.stock): PlacedFault | undefined {
  const { prices, leadTime } = file;
  const { least = 0, most = 0 } = leadTime ?? {};
  const faults: readonly (() => PlacedFault | undefined)[] = [
    () => logoFault(file.logo),
    () => (least > most ? fault(['leadTime'], 'shopFile.leadTurned', { least, most }) : undefined),
    () =>
      stock && stock.currency !== file.currency
        ? fault(['currency'], 'shopFile.currencies', { currency: file.currency, other: stock.currency })
        : undefined,
    ...(prices
      ? [() => rowsFault('plates', prices.plates, stock), ...prices.plates.map((row, i) => () => tableFault(row, i))]
      : []),
    () => prices?.cutting && rowsFault('cutting', prices.cutting, stock),
    () => prices?.quantitySteps && stepsFault(prices.quantitySteps),
  ];
  for (const look of faults) {
    const found = look();
    if (found) return found;
  }
  return undefined;
}

function fault(
  path: Path,
  key: Extract<KeyOf<typeof SHOP_EN>, `shopFile.${string}`>,
  values: WordValues = {},
): PlacedFault {
  return { path, refused: SHOP_EN.refused(key, values) };
}

function logoFault(logo: ShopFile['logo']): PlacedFault | undefined {
  if (logo?.kind === 'drawing') {
    const i = logo.paths.findIndex(({ d }) => readLogoPath(d) === undefined);
    return i < 0 ? undefined : fault(['logo', 'paths', i, 'd'], 'shopFile.logoPath', { where: `logo paths[${i + 1}]` });
  }
  if (logo?.kind !== 'picture') return undefined;
  const read = readLogoPicture(logo.data);
  if (!read) return fault(['logo', 'data'], 'shopFile.logoBroken');
  const { width, height, plain } = read;
  if (Math.max(width, height) > MOST_LOGO_DOTS) {
    return fault(['logo', 'data'], 'shopFile.logoLarge', { width, height, most: MOST_LOGO_DOTS });
  }
  return plain ? undefined : fault(['logo', 'data'], 'shopFile.logoSeeThrough');
}

/** Rows of one list: names that lead nowhere, ends turned about, and rows that never get a turn. */
function rowsFault(
  list: 'plates' | 'cutting',
  rows: readonly Row[],
  stock: ShopStock | undefined,
): PlacedFault | undefined {
  for (const [i, row] of rows.entries()) {
    const path = ['prices', list, i];
    const where = `prices ${list}[${i + 1}]`;
    for (const kind of ['materials', 'processes'] as const) {
      const at = stock ? (row[kind]?.findIndex((id) => !stock[kind].some((known) => known.id === id)) ?? -1) : -1;
      if (at < 0) continue;
      const key = kind === 'materials' ? 'shopFile.materialUnknown' : 'shopFile.processUnknown';
      return fault([...path, kind, at], key, { where, id: visible(row[kind]![at]!) });
    }
    const { least = 0, most = 0 } = row.thicknessMm ?? {};
    if (least > most) {
      return fault([...path, 'thicknessMm'], 'shopFile.thicknessTurned', {
        where: `${where} thicknessMm`,
        least,
        most,
      });
    }
    if (rows.slice(0, i).some((before) => takesAllOf(before, row))) return fault(path, 'shopFile.rowHidden', { where });
  }
  return undefined;
}

function takesAllOf(before: Row, row: Row): boolean {
  const covers = (all: readonly string[] | undefined, some: readonly string[] | undefined): boolean =>
    all === undefined || (some?.every((id) => all.includes(id)) ?? false);
  const thick = before.thicknessMm;
  const within =
    !thick || (row.thicknessMm && thick.least <= row.thicknessMm.least && thick.most >= row.thicknessMm.most);
  return covers(before.materials, row.materials) && covers(before.processes, row.processes) && Boolean(within);
}

function tableFault({ upTo }: Prices['plates'][number], i: number): PlacedFault | undefined {
  const where = `prices plates[${i + 1}] upTo`;
  for (const [j, row] of upTo.entries()) {
    const before = upTo[j - 1];
    if (!before) continue;
    const path = ['prices', 'plates', i, 'upTo', j];
    if (row.diameterMm <= before.diameterMm) return fault(path, 'shopFile.sizesUnsorted', { where });
    if (row.each < before.each) {
      return fault(path, 'shopFile.cheaperLarger', { where, less: row.each, more: before.each });
    }
  }
  return undefined;
}

function stepsFault(steps: NonNullable<Prices['quantitySteps']>): PlacedFault | undefined {
  const j = steps.findIndex((step, at) => {
    const before = steps[at - 1];
    return before && (step.from <= before.from || step.percentOff <= before.percentOff);
  });
  const where = 'prices quantitySteps';
  return j < 0 ? undefined : fault(['prices', 'quantitySteps', j], 'shopFile.stepsUnsorted', { where });
}
