import { surfaceOf } from '../../../geometry/barrel/surface-of.ts';
import { checkLettering } from '../../../geometry/checks/check-lettering.ts';
import { emptyDesign, newLineText } from '../../../geometry/design/defaults.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import type { Finding } from '../../../geometry/findings.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { stockRules } from '../../../geometry/stock/stock-rules.ts';

/** A design of these texts, a line each, t0, t1 and so on. */
export function designOf(...texts: string[]): Design {
  return {
    ...emptyDesign(),
    elements: texts.map((text, i) => ({ ...newLineText(`t${i}`, 'cinzel-700'), text })),
  };
}

/** What is found in the lettering of a design, on one of its plates. */
export function findingsOf(design: Design, plate = design.plates[0]!): Finding[] {
  return checkLettering({
    design,
    plate,
    diameterMm: 500,
    lying: surfaceOf(design, 500, design.stock.thicknessMm),
    rules: stockRules(design.stock, 'auto', BUILT_IN).rules,
    book: BUILT_IN,
    layout: { shapes: [], extents: [], findings: [] },
    openings: [],
    bridges: [],
    islands: [],
    unbridged: [],
  });
}

export function codesOf(...texts: string[]): string[] {
  return findingsOf(designOf(...texts)).map((f) => `${f.severity} ${f.code}`);
}

/** The texts after the first mend that is offered. */
export function mended(...texts: string[]): string | undefined {
  const change = findingsOf(designOf(...texts)).find((f) => f.mend)?.mend?.change;
  return change?.kind === 'replace-text' ? change.text : undefined;
}
