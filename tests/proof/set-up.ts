import { readFileSync } from 'node:fs';
import { loadFaces } from '../../fonts/node-faces.ts';
import { sheetFonts } from '../../geometry/command/read-files.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design, DesignElement } from '../../geometry/design/schema.ts';
import type { PlannedPlate } from '../../geometry/files/paper/plate-drawing.ts';
import type { Finding } from '../../geometry/findings.ts';
import { planPlates } from '../../geometry/pipeline/plan-plates.ts';
import type { ProofAsked } from '../../geometry/proof/proof-asked.ts';
import type { Quote } from '../../geometry/shop/quote.ts';
import type { ShopBook } from '../../geometry/shop/shop-book.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { handDesign, handPlate } from '../files/hand-plate.ts';

export const fonts = await sheetFonts();

/** ISO 32000-1: a unit of default user space is 1/72 in; 1 in = 25.4 mm. */
export const MM = 72 / 25.4;

export function plannedPlate(diameterMm: number, name = 'Large', findings: readonly Finding[] = []): PlannedPlate {
  const plate = handPlate(diameterMm, name, findings);
  return { plate, plan: planCuts(plate) };
}

export function lineText(id: string, text: string): DesignElement {
  return {
    kind: 'lineText',
    id,
    text,
    face: 'libre-caslon-text-700',
    x: 0,
    y: 0,
    capHeight: 0.1,
    turnDeg: 0,
    tracking: 0,
    fit: 'natural',
  };
}

/** A proof of a plate made by hand, on A4 in English, without pages at true size. */
export function asked(change: Partial<ProofAsked> = {}): ProofAsked {
  return {
    design: handDesign(),
    plates: [plannedPlate(500)],
    book: BUILT_IN,
    page: 'a4',
    tiles: false,
    language: 'en',
    ...change,
  };
}

export const SHOP: ShopBook = {
  name: 'Marrow Lane Metalworks',
  address: ['3 Marrow Lane', 'Perrymead'],
  contact: { phone: '01234 567', email: 'desk@marrow-lane.example' },
  legal: ['Goods stay ours until they are paid for.'],
  logo: { kind: 'drawing', viewBox: [0, 0, 20, 10], paths: [{ d: 'M0 0L20 0L10 10Z', colour: '#a4562a' }] },
  currency: 'EUR',
  pages: ['design', 'proof', 'cut'],
  pageSize: 'a4',
};

export const QUOTE: Quote = {
  currency: 'EUR',
  lines: [
    { code: 'plate', plate: 'Large', count: 2, unit: 'pieces', each: 40, minor: 8000 },
    { code: 'cutting', plate: 'Large', count: 12.34, unit: 'metres', each: 3, minor: 3702 },
    { code: 'quantity', count: 5, unit: 'per-cent', each: -1, minor: -500 },
    { code: 'packing', count: 1, unit: 'pieces', each: 8, minor: 800 },
  ],
  netMinor: 12_002,
  tax: { name: 'VAT', percent: 20, minor: 2400, included: false },
  totalMinor: 14_402,
  steps: [],
  lead: { least: 5, most: 8 },
  validDays: 30,
};

/** A design that ships, planned and proven. */
export async function shipped(
  name: string,
): Promise<{ readonly design: Design; readonly plates: readonly PlannedPlate[] }> {
  const read = readDesign(readFileSync(`web/demo/${name}.json`, 'utf8'));
  if ('problem' in read) throw new Error(read.problem);
  const { faces } = await loadFaces(read.design);
  return { design: read.design, plates: planPlates(read.design, faces, createStore(), BUILT_IN) };
}
