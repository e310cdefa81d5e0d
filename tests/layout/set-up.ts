import type { FaceSource } from '../../geometry/adapters/face.ts';
import { loadFaces } from '../../fonts/node-faces.ts';
import { DESIGN_FORMAT, DESIGN_VERSION } from '../../geometry/design/limits.ts';
import { designSchema } from '../../geometry/design/schema.ts';
import type { Border, Design, DesignElement, LineText, RingText } from '../../geometry/design/schema.ts';
import { layOut } from '../../geometry/layout/lay-out.ts';
import type { Layout, PlacedShape } from '../../geometry/layout/placed.ts';
import { placeRings } from '../../geometry/layout/rail.ts';
import { flattenOutline } from '../../geometry/measure/flatten.ts';
import type { Ring } from '../../geometry/shapes.ts';
import type { StockRules } from '../../geometry/stock/rules.ts';
import { FLATTEN_ERROR_MM } from '../../geometry/units.ts';

/** Invented rules, much like thin sheet under a laser. */
export const RULES: StockRules = {
  kerfMm: 0.2,
  leastBridgeMm: 1.8,
  leastWebMm: 1.5,
  leastOpeningMm: 1.5,
  leastInsideRadiusMm: 0.1,
  rimMarginMm: 3,
  longestSpanMm: 60,
  thicknessMm: 1.5,
};

/** So little metal asked that no letter is moved. */
export const FREE_RULES: StockRules = { ...RULES, leastWebMm: 0.0001, leastBridgeMm: 0.0001, leastOpeningMm: 0.0001 };

export function ringText(some: Partial<RingText>): RingText {
  return {
    kind: 'ringText',
    id: 'ring',
    text: 'MARROW LANE PERRY',
    face: 'stardos-stencil-700',
    inner: 0.74,
    outer: 0.86,
    middleDeg: 0,
    reads: 'outward',
    tracking: 0,
    fit: 'natural',
    ...some,
  };
}

export function lineText(some: Partial<LineText>): LineText {
  return {
    kind: 'lineText',
    id: 'line',
    text: 'CASK 12',
    face: 'stardos-stencil-700',
    x: 0,
    y: 0,
    capHeight: 0.15,
    turnDeg: 0,
    tracking: 0,
    fit: 'natural',
    ...some,
  };
}

export function border(some: Partial<Border>): Border {
  return { kind: 'border', id: 'border', style: 'ring', inner: 0.9, outer: 0.95, count: 'auto', ...some };
}

export async function facesOf(...elements: DesignElement[]): Promise<FaceSource> {
  return (await loadFaces({ elements, ownFaces: [] })).faces;
}

export async function lay(elements: DesignElement[], diameterMm = 520, rules = RULES): Promise<Layout> {
  return layOut(designOf(elements), diameterMm, rules, await facesOf(...elements));
}

export function designOf(elements: DesignElement[]): Design {
  return designSchema.parse({
    format: DESIGN_FORMAT,
    version: DESIGN_VERSION,
    title: 'Marrow Lane Perry',
    head: { source: { kind: 'measured', alongMm: 530, acrossMm: 526 }, clearanceMm: 3, crownMm: 0 },
    surface: 'head',
    plates: [{ id: 'p', name: 'Large', diameter: 'fit', quantity: 1 }],
    stock: { material: 'stainless', thicknessMm: 1.5, process: 'laser', use: 'paint' },
    elements,
    bridges: { width: 'auto', manner: 'hidden', edits: [] },
    ownFaces: [],
    order: { who: '', reference: '', neededBy: '', notes: '' },
  });
}

/** A shape's edges on the plate, at the project's flattening error. */
export function onPlate(shape: PlacedShape): Ring[] {
  return placeRings(flattenOutline(shape.outline, FLATTEN_ERROR_MM), shape.placement);
}

export function codes(layout: Layout): string[] {
  return layout.findings.map((finding) => `${finding.severity} ${finding.code}`);
}
