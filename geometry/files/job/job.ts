import type { CutPass, SheetPlan } from '../../cutplan/sheet-plan.ts';
import type { Design } from '../../design/schema.ts';
import type { PlateResult } from '../../plate/plate.ts';
import type { NestedSheet, PlacedPlate } from '../../sheet/sheets.ts';
import { CUT_EN } from '../../sentences/cut-en.ts';
import type { Refused } from '../../sentences/wording.ts';
import { showFingerprint } from '../../design/show-fingerprint.ts';
import { approvalOf } from '../approval.ts';
import { fileNumber } from '../numbers.ts';
import { oneLine } from '../plain-text.ts';

/** What one wish of an order is, as files say it: which plate of which design, as it was when the plan was made. */
export interface JobDesign {
  readonly wish: string;
  readonly title: string;
  readonly plateName: string;
  /** The customer's order number; empty: none. */
  readonly reference: string;
  /** 64 hex digits. */
  readonly fingerprint: string;
  readonly approval: string;
}

/** A sheet with its plates and its plan. */
export interface JobSheet {
  readonly sheet: NestedSheet;
  readonly plan: SheetPlan;
  /** What it is cut from and how, a line each, in English; absent: not told. */
  readonly facts?: readonly string[];
}

/** An order ready to be cut. */
export interface Job {
  readonly sheets: readonly JobSheet[];
  /** One for every wish that has a plate on a sheet. */
  readonly designs: readonly JobDesign[];
}

export function jobDesign(wish: string, design: Design, plate: PlateResult): JobDesign {
  return {
    wish,
    title: oneLine(design.title, 120) || 'Stencil',
    plateName: oneLine(plate.name, 60),
    reference: oneLine(design.order.reference, 60),
    fingerprint: plate.fingerprint,
    approval: approvalOf(design, plate.fingerprint).text,
  };
}

/**
 * Whether a plan still cuts what the designs say: a sentence for each wish whose design was changed or is gone since.
 * now: for each wish the fingerprint that its plate has now.
 */
export function findOutdated(planned: readonly JobDesign[], now: ReadonlyMap<string, string>): Refused[] {
  return planned.flatMap(({ wish, title, fingerprint }) => {
    const current = now.get(wish);
    if (current === undefined) return [CUT_EN.refused('sheetFile.gone', { title })];
    if (current === fingerprint) return [];
    const values = { title, planned: showFingerprint(fingerprint), now: showFingerprint(current) };
    return [CUT_EN.refused('sheetFile.changed', values)];
  });
}

/** The designs of which plates lie on this sheet, in the order in which they were asked for. */
export function designsOn({ sheet }: JobSheet, designs: readonly JobDesign[]): JobDesign[] {
  const there = new Set(sheet.plates.map((p) => p.wish));
  return designs.filter((d) => there.has(d.wish));
}

export function designOfPlate(plate: PlacedPlate | undefined, designs: readonly JobDesign[]): JobDesign | undefined {
  return plate && designs.find((d) => d.wish === plate.wish);
}

/** `Sheet 2 of rack, 1250 x 2500 mm`: number, kind and size. */
export function sheetName({ sheet }: JobSheet): string {
  return `Sheet ${sheet.number} of ${oneLine(sheet.kind, 60)}, ${fileNumber(sheet.widthMm)} x ${fileNumber(sheet.heightMm)} mm`;
}

/** What a pass is called in the shop. */
export function passName(pass: CutPass): string {
  return { opening: 'opening', rim: 'rim', witness: 'witness mark' }[pass.kind];
}
