import { faceEntry } from '../../../fonts/catalogue.ts';
import { plateDiameterMm } from '../../../geometry/barrel/blank.ts';
import { canonicalJson } from '../../../geometry/design/canonical-json.ts';
import { isText } from '../../../geometry/design/kinds.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { materialIn, processIn, type StockBook } from '../../../geometry/stock/stock-book.ts';
import type { Unit } from '../../words/preferences.ts';
import { lengthWords } from '../../words/say/format-number.ts';
import { materialName, processName } from '../../words/say/record-words.ts';
import { t } from '../../words/t.ts';

export const FACTS = ['face', 'size', 'material'] as const;
export type Fact = (typeof FACTS)[number];

/** What tells one option from another, in plain words; the process where it is to be said. */
export function optionFacts(
  design: Design,
  book: StockBook,
  unit: Unit,
  withProcess: boolean,
): Readonly<Record<Fact, string>> {
  const { stock, plates } = design;
  const material = materialIn(book, stock.material);
  const process = processIn(book, stock.process);
  return {
    face: faceNames(design).join(', ') || t('proof.facts.noFace'),
    size: plates
      .map((p) =>
        t('proof.facts.plate', {
          name: p.name,
          // number and unit stay on one line
          across: lengthWords(plateDiameterMm(design, p).diameterMm, unit).replace(' ', '\u00a0'),
        }),
      )
      .join(', '),
    material: [
      t('advice.recommend.stock', {
        thickness: lengthWords(stock.thicknessMm, unit, unit === 'mm' ? 2 : 3),
        material: material ? materialName(material) : stock.material,
      }),
      ...(withProcess ? [process ? processName(process) : stock.process] : []),
    ].join(', '),
  };
}

/** Names of the faces that a design is set in, each once, in the order of its texts. */
export function faceNames({ elements, ownFaces }: Design): readonly string[] {
  const ids = new Set(elements.flatMap((e) => (isText(e) && e.text.trim() !== '' ? [e.face] : [])));
  return [...ids].map((id) => faceEntry(id)?.name ?? ownFaces.find((f) => f.id === id)?.name ?? id);
}

/** In what two designs differ. */
export function factsThatDiffer(design: Design, other: Design): ReadonlySet<Fact> {
  const parts: Readonly<Record<Fact, (d: Design) => unknown>> = {
    face: (d) => d.elements.map((e) => (isText(e) ? e.face : '')),
    size: (d) => d.plates.map(({ id, diameter }) => [id, diameter]),
    material: (d) => d.stock,
  };
  return new Set(FACTS.filter((fact) => canonicalJson(parts[fact](design)) !== canonicalJson(parts[fact](other))));
}
