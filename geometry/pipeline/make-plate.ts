import type { FaceSource } from '../adapters/face.ts';
import { plateDiameterMm } from '../barrel/blank.ts';
import { isLifted } from '../barrel/finger-room.ts';
import { neutralRadiusMm } from '../barrel/surface.ts';
import { surfaceOf, type Lying } from '../barrel/surface-of.ts';
import { bridgeOpenings } from '../bridges/bridge-openings.ts';
import { checkPlate } from '../checks/check-plate.ts';
import { judgeGaps } from '../checks/gap-findings.ts';
import { notOnePiece } from '../checks/not-one-piece.ts';
import { proveUnits } from '../checks/prove-units.ts';
import { verifyPlate } from '../checks/verify-plate.ts';
import { fingerprintOf } from '../design/fingerprint.ts';
import type { Design } from '../design/schema.ts';
import { sortFindings, verdictOf } from '../findings.ts';
import { holdLettering } from './hold-lettering.ts';
import { layOut, type OnBarrel } from '../layout/lay-out.ts';
import { layMaskRing } from '../layout/mask-ring.ts';
import { areaOf } from '../measure/facts.ts';
import { gatherUnits } from '../openings/gather-units.ts';
import type { PlateResult } from '../plate/plate.ts';
import type { SolveStore } from './solve-store.ts';
import { sheetMassKg } from '../stock/mass.ts';
import { ownRules } from '../stock/own-rules.ts';
import { materialIn, type StockBook } from '../stock/stock-book.ts';
import { stockRules } from '../stock/stock-rules.ts';

/**
 * One plate of a design from layout to proof: the one function that knows all stages and their order.
 *
 * In: a design that has been read (readDesign), the id of one of its plates, the faces it uses, a store that the
 * caller keeps so that what is unchanged is not worked out again, and what the shop can cut. Out: the plate, with everything that is wrong with
 * it as findings. Throws RangeError only when the design has no such plate.
 *
 * 1. Diameter from the head, rules from the stock.
 * 2. Layout in mm, of the design or of a ring that masks around another plate. Letters keep apart by a bridge's width, so that each can be bridged on its own.
 * 3. Openings gathered into units; units bridged.
 * 4. Checks; the proof; what is narrow.
 * 5. Once more, a little smaller, where lettering that takes its size from its room does not hold.
 */
export function makePlate(
  design: Design,
  plateId: string,
  faces: FaceSource,
  store: SolveStore,
  book: StockBook,
): PlateResult {
  const made = holdLettering(design, (tried) => makeAsAsked(tried, plateId, faces, store, book));
  // sizes that the layout chose are no change of the design
  return { ...made, fingerprint: fingerprintOf(design, ownRules(design, book)) };
}

function makeAsAsked(
  design: Design,
  plateId: string,
  faces: FaceSource,
  store: SolveStore,
  book: StockBook,
): Omit<PlateResult, 'fingerprint'> {
  const spec = design.plates.find((p) => p.id === plateId);
  if (!spec) throw new RangeError(`The design has no plate ${plateId}.`);
  const { diameterMm, findings: blankFindings } = plateDiameterMm(design, spec);
  const { rules, findings: stockFindings } = stockRules(design.stock, design.bridges.width, book);
  const apart = { ...rules, leastWebMm: Math.max(rules.leastWebMm, rules.leastBridgeMm) };
  const lying = surfaceOf(design, diameterMm, design.stock.thicknessMm);
  const layout =
    spec.masks === undefined
      ? layOut(design, diameterMm, apart, faces, store.layouts, onBarrel(design, diameterMm, lying))
      : layMaskRing(spec, diameterMm, maskedMm(design, spec.masks), rules);
  const units = gatherUnits(layout, rules.leastBridgeMm, store.outlines);
  const unbridged = units.flatMap((u) => u.inPlace);
  const bridged = bridgeOpenings(units, rules, design, store);
  const { openings, bridges, islands } = bridged;

  const checked = checkPlate({
    design,
    plate: spec,
    diameterMm,
    lying,
    rules,
    book,
    layout,
    openings,
    bridges,
    islands,
    unbridged,
  });
  const regions = openings.map((o) => o.region);
  const proof = proveUnits(bridged.units, regions, diameterMm, rules, store.proofs);
  // Units that do not keep apart can wall in metal between them: only the whole plate shows it.
  const loose = proof.close ? verifyPlate(diameterMm, regions, rules.leastBridgeMm).loose : proof.loose;
  const { findings: gapFindings, ...narrowest } = judgeGaps(proof, openings, rules);

  const openAreaMm2 = openings.reduce((sum, o) => sum + areaOf(o.region), 0);
  const metalAreaMm2 = (Math.PI * diameterMm * diameterMm) / 4 - openAreaMm2;
  const findings = sortFindings([
    ...blankFindings,
    ...stockFindings,
    ...layout.findings,
    ...bridged.findings,
    ...loose.map((at) => notOnePiece(at, rules.leastBridgeMm)),
    ...checked,
    ...gapFindings,
  ]);
  return {
    plateId: spec.id,
    name: spec.name,
    diameterMm,
    quantity: spec.quantity,
    rules,
    layout,
    unbridged,
    openings,
    bridges,
    islands,
    measures: {
      openings: openings.length,
      bridges: bridges.length,
      islands: islands.length,
      ...narrowest,
      openAreaMm2,
      metalAreaMm2,
      massKg: sheetMassKg(
        metalAreaMm2,
        design.stock.thicknessMm,
        materialIn(book, design.stock.material)?.densityKgM3.value ?? 0,
      ),
    },
    findings,
    verdict: verdictOf(findings),
  };
}

function onBarrel(design: Design, diameterMm: number, lying: Lying): OnBarrel {
  const side = 'surface' in lying && lying.surface.kind === 'side' ? lying.surface : undefined;
  const spread = side && design.surface !== 'head' && design.surface.spread;
  return {
    ...(design.lifting && isLifted(design, diameterMm) && { lifting: design.lifting }),
    ...(side && spread && { spread: { radiusMm: neutralRadiusMm(side), lines: side.lines } }),
  };
}

/** Diameter of the plate that a ring goes around; undefined when there is none, or only another ring. */
function maskedMm(design: Design, plateId: string): number | undefined {
  const masked = design.plates.find((p) => p.id === plateId && p.masks === undefined);
  return masked && plateDiameterMm(design, masked).diameterMm;
}
