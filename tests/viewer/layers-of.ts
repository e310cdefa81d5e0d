import type { FaceSource } from '../../geometry/adapters/face.ts';
import type { Bridge, Island } from '../../geometry/bridges/types.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { Finding } from '../../geometry/findings.ts';
import type { Extent } from '../../geometry/layout/placed.ts';
import { clockPoint } from '../../geometry/measure/clock.ts';
import { placeRing } from '../../geometry/measure/place.ts';
import { gatherUnits } from '../../geometry/openings/gather-units.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import { bridgingLayers } from './bridging-layers.ts';
import { cutLayers } from './cut-layers.ts';
import {
  circlePath,
  layer,
  type Layer,
  LAYERS,
  linePath,
  type Mark,
  mm,
  outlinePath,
  regionPath,
  ringPath,
} from './layer.ts';

/** A plate and the outcome of each stage on the way to it, ready to be drawn. */
export interface Looked {
  readonly plate: PlateResult;
  /** As LAYERS lists them; a stage that could not be asked gives an empty layer, and `problems` says why. */
  readonly layers: readonly Layer[];
  readonly problems: readonly string[];
}

/**
 * One plate of a design with what every stage made of it. In: a design that has been read, the id of one of its
 * plates, its faces, what the shop can cut. The same input gives the same marks. Throws RangeError without such a plate.
 */
export function layersOf(design: Design, plateId: string, faces: FaceSource, book: StockBook): Looked {
  const store = createStore();
  const plate = makePlate(design, plateId, faces, store, book);
  const units = gatherUnits(plate.layout, plate.rules.leastBridgeMm, store.outlines);
  const { layers: cut, problem } = cutLayers(plate, design.stock, book);
  const made = [
    layer('blank', [plate], ({ diameterMm }) => [
      { kind: 'line', path: circlePath(diameterMm / 2), says: `blank, ${mm(diameterMm)}` },
    ]),
    layer('extents', plate.layout.extents, (extent) => [
      { kind: 'line', path: extentPath(extent), says: `element ${extent.elementId}` },
    ]),
    layer('layout', plate.layout.shapes, (shape) => [
      { kind: 'line', path: outlinePath(shape.outline, shape.placement), says: `${shape.id}: ${shape.label}` },
    ]),
    layer('unbridged', plate.unbridged, (region) => [{ kind: 'area', path: regionPath(region), says: 'opening' }]),
    ...bridgingLayers(units, plate.rules, design.bridges.manner),
    layer('openings', plate.openings, ({ id, word, region }) => [
      { kind: 'area', path: regionPath(region), says: `${id} of ${word}` },
    ]),
    layer('bridges', plate.bridges, (bridge) => [
      { kind: 'area', path: ringPath(bridge.outline), says: bridgeSays(bridge) },
    ]),
    layer('islands', plate.islands, (island) => [{ kind: 'dot', at: island.at, says: islandSays(island) }]),
    ...cut,
    layer('findings', plate.findings, (finding) => findingMarks(finding, plate.diameterMm / 2)),
  ];
  const byId = new Map(made.map((one) => [one.id, one]));
  return {
    plate,
    layers: LAYERS.map(({ id }) => byId.get(id) ?? { id, count: 0, marks: [] }),
    problems: problem === undefined ? [] : [problem],
  };
}

/** Where a finding is; one about the whole plate is drawn along its rim. */
export function findingMarks({ place, code, severity, sentence }: Finding, radiusMm: number): Mark[] {
  const says = `${severity} ${code}: ${sentence}`;
  const area = (path: string): Mark[] => [{ kind: 'area', path, says }];
  switch (place.kind) {
    case 'plate':
      return [{ kind: 'line', path: circlePath(radiusMm), says }];
    case 'point':
      return [...area(circlePath(place.radiusMm, place.at)), { kind: 'dot', at: place.at, says }];
    case 'ring':
      return area(ringPath(place.ring));
    case 'band':
      return area(circlePath(place.outerMm) + circlePath(place.innerMm));
  }
}

function bridgeSays({ id, widthMm, widens, editId, shapeId }: Bridge): string {
  const by = editId === undefined ? '' : `, by edit ${editId}`;
  return `bridge ${id} on ${shapeId}: ${mm(widthMm)} wide${widens ? ', widens a neck' : ''}${by}`;
}

function islandSays({ id, areaMm2, bridgeIds, small, hang }: Island): string {
  const give = hang ? `; a touch moves it ${mm(hang.touchMm)}` : '';
  return `island ${id}: ${areaMm2.toFixed(1)} mm2${small ? ', small' : ''}, held by ${bridgeIds.join(' ') || 'nothing'}${give}`;
}

function extentPath(extent: Extent): string {
  if (extent.kind === 'box') {
    const [w, h] = [extent.widthMm / 2, extent.heightMm / 2];
    const corners = [
      { x: -w, y: -h },
      { x: w, y: -h },
      { x: w, y: h },
      { x: -w, y: h },
    ];
    return ringPath(placeRing(corners, extent));
  }
  const { innerMm, outerMm, startDeg, endDeg } = extent;
  const steps = Math.max(2, Math.ceil(Math.abs(endDeg - startDeg) / 2));
  const along = (radius: number) =>
    Array.from({ length: steps + 1 }, (_, i) => clockPoint(radius, startDeg + ((endDeg - startDeg) * i) / steps));
  return `${linePath([...along(outerMm), ...along(innerMm).reverse()])}Z`;
}
