import { barrelById } from '../barrel/barrels.ts';
import { canonicalJson } from '../design/canonical-json.ts';
import { elementAsCut, fingerprintOf, headAsCut, plateAsCut } from '../design/fingerprint.ts';
import { isText } from '../design/kinds.ts';
import type { BridgeEdit, Design, DesignElement, PlateSpec } from '../design/schema.ts';
import { materialWords, processWords } from '../stock/record-key.ts';
import { materialIn, processIn, type StockBook } from '../stock/stock-book.ts';
import { inMm, named, say } from '../sentences/say.ts';
import { APPROVAL_EN } from '../sentences/approval-en.ts';
import type { WordValue } from '../sentences/wording.ts';
import { apart, asUsual, difference, DIFFERENCE_GROUPS, shownAmount, type Difference } from './difference.ts';
import { elementDifferences, groupOf, mannerWords } from './element-differences.ts';
import { elementName } from './name-element.ts';
import { pairUp, type Pairs } from './pair-up.ts';

export interface Naming {
  /** What a person calls a face that comes with the tool; absent: by its id. */
  readonly faceName?: (id: string) => string | undefined;
  /** Stock that materials and processes are named from. */
  readonly book: StockBook;
  /**
   * Fingerprints of the two by the shop's own rules, where they are known: rules that changed while the design did not
   * are a difference too.
   */
  readonly fingerprints?: { readonly before: string; readonly after: string };
}

/**
 * What is cut otherwise, in sentences for people, grouped in the order of DIFFERENCE_GROUPS. Whenever the fingerprints
 * of the two differ there is at least one difference, and none when they are the same: what is only on paper (title,
 * order, quantities, names of plates) is not told here.
 */
export function differencesOf(before: Design, after: Design, naming: Naming): readonly Difference[] {
  if (fingerprintOf(before) === fingerprintOf(after)) {
    const { fingerprints } = naming;
    const ruled = fingerprints !== undefined && fingerprints.before !== fingerprints.after;
    return ruled ? [difference('stock', 'differences.rules')] : [];
  }
  const pairs = pairUp(before.elements, after.elements, (e) => canonicalJson(elementAsCut(e)));
  const found = [
    ...ofElements(pairs, faceNames(before, after, naming)),
    ...ofFonts(before, after),
    ...ofBridges(before, after, pairs),
    ...ofPlates(before, after),
    ...ofStock(before, after, naming.book),
    ...ofBarrel(before, after),
  ];
  if (found.length === 0) return [difference('lettering', 'differences.other')];
  return DIFFERENCE_GROUPS.flatMap((group) => found.filter((d) => d.group === group));
}

function faceNames(before: Design, after: Design, { faceName }: Naming): (id: string) => string {
  const own = new Map([...before.ownFaces, ...after.ownFaces].map((f) => [f.id, f.name]));
  return (id) => own.get(id) ?? faceName?.(id) ?? id;
}

function ofElements(
  { both, gone, come, reordered }: Pairs<DesignElement>,
  faceName: (id: string) => string,
): Difference[] {
  const changed = both.flatMap(([was, is]) =>
    was.kind === is.kind ? elementDifferences(was, is, faceName) : [...removed(was), ...added(is)],
  );
  const order = reordered ? [difference('drawings', 'differences.order')] : [];
  return [...changed, ...gone.flatMap(removed), ...come.flatMap(added), ...order];
}

function removed(element: DesignElement): Difference[] {
  const values = { what: elementName(element) };
  return [difference(groupOf(element), 'differences.removed', values, { elementId: element.id })];
}

function added(element: DesignElement): Difference[] {
  const values = { what: elementName(element) };
  return [difference(groupOf(element), 'differences.added', values, { elementId: element.id })];
}

/** A font of one's own that is used before and after, under the same id, and is another file. */
function ofFonts(before: Design, after: Design): Difference[] {
  const used = [before, after].map(({ elements }) => new Set(elements.filter(isText).map((e) => e.face)));
  const names = new Map([...before.ownFaces, ...after.ownFaces].map((f) => [f.id, f.name]));
  const dataIn = (design: Design, id: string) => design.ownFaces.find((f) => f.id === id)?.data;
  return [...names]
    .filter(([id]) => used.every((faces) => faces.has(id)) && dataIn(before, id) !== dataIn(after, id))
    .map(([, name]) => difference('lettering', 'differences.fontFile', { name }));
}

function ofBridges(before: Design, after: Design, { both, gone, come }: Pairs<DesignElement>): Difference[] {
  const found: Difference[] = [];
  const [was, is] = [before.bridges, after.bridges];
  if (canonicalJson(was.width) !== canonicalJson(is.width)) {
    const words = ({ width }: Design['bridges']) =>
      width === 'auto' ? APPROVAL_EN.say('kinds.asStockAsks') : width.mm;
    const values = unlike(words(was), words(is), 'mm');
    found.push(difference('bridges', 'differences.bridgeWidth', values));
  }
  if (was.manner !== is.manner) {
    const values = { before: mannerWords(was.manner), after: mannerWords(is.manner) };
    found.push(difference('bridges', 'differences.mannerAll', values));
  }
  const byHand = (edits: readonly BridgeEdit[], on: (id: string) => boolean) =>
    canonicalJson(edits.filter((e) => on(e.element)).map((e) => ({ ...e, id: '', element: '' })));
  for (const [a, b] of both) {
    if (byHand(was.edits, (id) => id === a.id) === byHand(is.edits, (id) => id === b.id)) continue;
    const values = { what: elementName(b) };
    found.push(difference('bridges', 'differences.bridgesByHand', values, { elementId: b.id }));
  }
  // On elements that are not there.
  const known = (elements: readonly DesignElement[]) => new Set(elements.map((e) => e.id));
  const [knownBefore, knownAfter] = [known(before.elements), known(after.elements)];
  if (byHand(was.edits, (id) => !knownBefore.has(id)) !== byHand(is.edits, (id) => !knownAfter.has(id))) {
    found.push(difference('bridges', 'differences.bridgesByHand', { what: say('names.something') }));
  }
  // Where elements came or went, their places in the list moved, and that is told already.
  const told = found.length + gone.length + come.length > 0;
  const places = (edits: readonly BridgeEdit[], side: 0 | 1) =>
    canonicalJson(edits.map((e) => ({ ...e, id: '', element: both.findIndex((pair) => pair[side].id === e.element) })));
  if (!told && places(was.edits, 0) !== places(is.edits, 1)) {
    found.push(difference('bridges', 'differences.bridgesOrder'));
  }
  return found;
}

function ofPlates(before: Design, after: Design): Difference[] {
  const found: Difference[] = [];
  // The ring's own size and whose ring it is; the plate within tells its own size.
  const asCut = (plate: PlateSpec) => canonicalJson([plate.diameter, plate.masks !== undefined]);
  const { both, gone, come } = pairUp(before.plates, after.plates, asCut);
  for (const [was, is] of both) {
    const about = { plateId: is.id };
    if (canonicalJson(was.diameter) !== canonicalJson(is.diameter)) {
      const values = { plate: is.name, ...diameters(was, is) };
      found.push(difference('plates', 'differences.plateSize', values, about));
    }
    const within = (plate: PlateSpec, design: Design) =>
      canonicalJson(plateAsCut({ ...plate, diameter: 'fit' }, design));
    if (was.masks !== is.masks && within(was, before) !== within(is, after)) {
      found.push(difference('plates', 'differences.maskOther', { plate: is.name }, about));
    }
  }
  for (const { id, name } of gone)
    found.push(difference('plates', 'differences.plateRemoved', { plate: name }, { plateId: id }));
  for (const { id, name } of come)
    found.push(difference('plates', 'differences.plateAdded', { plate: name }, { plateId: id }));
  if (canonicalJson(before.lifting ?? null) !== canonicalJson(after.lifting ?? null)) {
    const changed = before.lifting ? 'differences.liftingChanged' : 'differences.liftingAdded';
    found.push(difference('plates', after.lifting ? changed : 'differences.liftingRemoved'));
  }
  return found;
}

function diameters({ diameter: was }: PlateSpec, { diameter: is }: PlateSpec): { before: WordValue; after: WordValue } {
  if (typeof was !== 'string' && typeof is !== 'string') {
    if ('mm' in was && 'mm' in is) return apart(was.mm, is.mm, 'mm');
    if ('share' in was && 'share' in is) {
      const { before, after } = apart(was.share * 100, is.share * 100);
      return {
        before: APPROVAL_EN.say('kinds.ofFitting', { percent: before }),
        after: APPROVAL_EN.say('kinds.ofFitting', { percent: after }),
      };
    }
  }
  const words = (d: PlateSpec['diameter']): WordValue => {
    if (d === 'fit') return APPROVAL_EN.say('kinds.asFits');
    return 'mm' in d ? inMm(d.mm, 2) : APPROVAL_EN.say('kinds.ofFitting', { percent: shownAmount(d.share * 100) });
  };
  return { before: words(was), after: words(is) };
}

function ofStock({ stock: was }: Design, { stock: is }: Design, book: StockBook): Difference[] {
  const found: Difference[] = [];
  if (was.material !== is.material) {
    const words = (id: string) => {
      const material = materialIn(book, id);
      return material ? materialWords(material) : named('', id);
    };
    const values = { before: words(was.material), after: words(is.material) };
    found.push(difference('stock', 'differences.material', values));
  }
  if (was.thicknessMm !== is.thicknessMm) {
    found.push(difference('stock', 'differences.thickness', apart(was.thicknessMm, is.thicknessMm, 'mm')));
  }
  if (was.process !== is.process) {
    const words = (id: string) => {
      const process = processIn(book, id);
      return process ? processWords(process) : named('', id);
    };
    found.push(difference('stock', 'differences.process', { before: words(was.process), after: words(is.process) }));
  }
  if (was.use !== is.use) {
    found.push(difference('stock', is.use === 'paint' ? 'differences.toPaint' : 'differences.toTorch'));
  }
  return found;
}

function ofBarrel(before: Design, after: Design): Difference[] {
  const found: Difference[] = [];
  const [was, is] = [before.surface, after.surface];
  if (was === 'head' ? is !== 'head' : is === 'head') {
    found.push(difference('barrel', is === 'head' ? 'differences.toHead' : 'differences.toSide'));
  } else if (canonicalJson(was) !== canonicalJson(is)) found.push(difference('barrel', 'differences.side'));
  if (canonicalJson(headAsCut(before)) === canonicalJson(headAsCut(after))) return found;
  const [head, now] = [before.head, after.head];
  if (canonicalJson(head.source) !== canonicalJson(now.source)) {
    found.push(difference('barrel', 'differences.barrel', { before: headWords(before), after: headWords(after) }));
  }
  if (head.clearanceMm !== now.clearanceMm) {
    found.push(difference('barrel', 'differences.clearance', apart(head.clearanceMm, now.clearanceMm, 'mm')));
  }
  if (head.recessMm !== now.recessMm) {
    const values = unlike(head.recessMm ?? asUsual(), now.recessMm ?? asUsual(), 'mm');
    found.push(difference('barrel', 'differences.recess', values));
  }
  return found;
}

function headWords({ head: { source } }: Design): WordValue {
  if (source.kind === 'barrel') {
    const barrel = barrelById(source.barrel);
    return barrel ? named(`barrels.${barrel.id}.name`, barrel.name) : named('', source.barrel);
  }
  return APPROVAL_EN.say('kinds.measured', { along: inMm(source.alongMm, 3), across: inMm(source.acrossMm, 3) });
}

/** Two values of which either may be words: numbers with as many decimals as tell them apart. */
function unlike(
  before: Exclude<WordValue, string>,
  after: Exclude<WordValue, string>,
  unit: 'mm',
): { readonly before: WordValue; readonly after: WordValue } {
  if (typeof before === 'number' && typeof after === 'number') return apart(before, after, unit);
  const words = (value: WordValue) => (typeof value === 'number' ? inMm(value, 3) : value);
  return { before: words(before), after: words(after) };
}
