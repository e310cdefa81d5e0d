import { REASONS_EN } from '../sentences/reasons-en.ts';
import type { ReasonKey } from '../sentences/say.ts';
import { gaugeMm } from './gauges.ts';
import type { StockFile } from './stock-schema.ts';

/** How materials behave when cut and handled; rules that depend on no more than this are kept by family. */
export type Family = FileMaterial['family'];

/** yes: usual; poor: possible, but ask the shop; never: dangerous or useless. */
export type Fit =
  | { readonly grade: 'yes'; readonly reason: '' }
  /** Why not, in English, and its name in the table of words where it is one of the program's own sentences. */
  | { readonly grade: 'poor' | 'never'; readonly reason: string; readonly why?: ReasonKey };

export interface SheetThickness {
  readonly mm: number;
  /** As it is asked for at the counter: `16 ga`, `1.5 mm`. */
  readonly label: string;
}

export type RecordText = 'name' | 'sentence' | 'caution';

/** Texts of a record that the shop has written or changed: they are said as they stand, in every language. */
interface Worded {
  readonly ownTexts?: readonly RecordText[];
}

export interface Process extends Worded, Readonly<StockFile['processes'][number]> {}

export interface Material
  extends Worded, Readonly<Omit<FileMaterial, 'thicknesses' | 'torch' | 'processes' | 'gaugeSystem'>> {
  /** Thinnest first. */
  readonly thicknesses: readonly SheetThickness[];
  readonly torch: Fit;
  /** By process id, for every process of the book. */
  readonly fits: Readonly<Record<string, Fit>>;
}

/** What a shop can cut and what that asks: a stock file, ready to be asked. Plain data. */
export interface StockBook extends Readonly<
  Pick<StockFile, 'currency' | 'processes' | 'sheets' | 'rules' | 'advice' | 'work'>
> {
  readonly materials: readonly Material[];
  /** What ships, where this is a shop's own: the fingerprint counts the rules in which the two differ. */
  readonly shipped: StockBook | undefined;
}

type FileMaterial = StockFile['materials'][number];
type FileFit = FileMaterial['torch'];

/**
 * Of a stock file that has been read: gauges become millimetres, and what must never meet overrules everything.
 * `shipped`: the book that ships, or undefined for that one itself.
 */
export function bookOf(file: StockFile, shipped: StockBook | undefined): StockBook {
  const { currency, sheets, rules, advice, work } = file;
  return {
    currency,
    processes: file.processes.map((p) => ({ ...p, ...ownTextsOf(p, shipped?.processes) })),
    sheets,
    rules,
    advice,
    ...(work && { work }),
    materials: file.materials.map((m) => ({ ...materialOfFile(m, file), ...ownTextsOf(m, shipped?.materials) })),
    shipped,
  };
}

export function materialIn(book: StockBook, id: string): Material | undefined {
  return book.materials.find((m) => m.id === id);
}

export function processIn(book: StockBook, id: string): Process | undefined {
  return book.processes.find((p) => p.id === id);
}

/** How well a process cuts a material. */
export function processFit(material: Material, processId: string): Fit {
  return Object.hasOwn(material.fits, processId) ? material.fits[processId]! : NEVER_TRIED;
}

type Texts = { readonly id: string } & { readonly [Field in RecordText]?: string };

function ownTextsOf(record: Texts, shipped: readonly Texts[] | undefined): Worded {
  if (!shipped) return {};
  const like = shipped.find(({ id }) => id === record.id);
  const ownTexts = RECORD_TEXTS.filter((field) => !like || like[field] !== record[field]);
  return ownTexts.length > 0 ? { ownTexts } : {};
}

function materialOfFile(material: FileMaterial, file: StockFile): Material {
  const { thicknesses, torch, processes, gaugeSystem: _, ...rest } = material;
  const banned = (kind: (typeof file.neverMeet)[number]['kind']): Fit | undefined => {
    const ban = file.neverMeet.find((n) => n.kind === kind && material.holds?.includes(n.holds));
    return ban && fitOfFile({ grade: 'never', why: ban.why, reason: ban.reason });
  };
  const own = (id: string): Fit => (Object.hasOwn(processes, id) ? fitOfFile(processes[id]!) : NEVER_TRIED);
  return {
    ...rest,
    thicknesses: thicknesses.map((t) => thicknessOf(t, material)).sort((a, b) => a.mm - b.mm),
    torch: banned('torch') ?? fitOfFile(torch),
    fits: Object.fromEntries(file.processes.map((p) => [p.id, banned(p.kind) ?? own(p.id)])),
  };
}

function fitOfFile({ grade, why, reason }: FileFit): Fit {
  if (grade === 'yes') return { grade, reason: '' };
  if (why === undefined) return { grade, reason: reason ?? '' };
  return { grade, reason: REASONS_EN[why], why };
}

const RECORD_TEXTS: readonly RecordText[] = ['name', 'sentence', 'caution'];

const NEVER_TRIED: Fit = { grade: 'never', reason: REASONS_EN.neverTried, why: 'neverTried' };

function thicknessOf(t: FileMaterial['thicknesses'][number], { gaugeSystem }: FileMaterial): SheetThickness {
  if ('mm' in t) return { mm: t.mm, label: `${t.mm} mm` };
  return { mm: (gaugeSystem && gaugeMm(gaugeSystem, t.gauge)) ?? 0, label: `${t.gauge} ga` };
}
