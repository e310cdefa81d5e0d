import type { Face, FaceSource } from '../adapters/face.ts';
import type { Design, DesignElement, Lifting } from '../design/schema.ts';
import type { Cache } from '../cache.ts';
import { layBorder } from './border.ts';
import type { LayoutRules } from './layout-rules.ts';
import { layArtwork } from './artwork.ts';
import { layLifting } from './lifting.ts';
import { layInRoom, takesRoom } from './lay-in-room.ts';
import { layLineText } from './line-text.ts';
import type { Layout } from './placed.ts';
import { layMotif } from './motif.ts';
import { layRingText } from './ring-text.ts';
import { type Spread, spreadLayout } from './spread.ts';

/** Elements already laid out, by the element, the radius and the rules, each with the face it was set in. */
export type LayoutStore = Cache<LaidElement>;

export interface LaidElement extends Layout {
  readonly face: Face | undefined;
  /** What it had to keep clear of, by element. */
  readonly beside: readonly Shapes[];
}

type Shapes = Layout['shapes'];

/** What the barrel asks of a layout. */
export interface OnBarrel {
  /** Openings to take this plate up by. */
  readonly lifting?: Lifting;
  /** Lettering is set wider towards the sides of a rolled plate. */
  readonly spread?: Spread;
}

/**
 * Places all elements of a design on one plate.
 *
 * In: a design, the plate's diameter in mm (more than 0), the rules of its stock, the faces it uses, what the barrel asks.
 * Out: shapes in mm, outlines in their own frames with a placement each (frame and angles: shapes.ts), an extent for
 * every element even when it draws nothing, and findings. The same input always gives the same output.
 * Promised: letters of one text keep the least web between them, border pieces least web and least bridge.
 * Not promised: that elements keep clear of each other or of the rim; the checks say that.
 */
export function layOut(
  design: Design,
  diameterMm: number,
  rules: LayoutRules,
  faces: FaceSource,
  store?: LayoutStore,
  { lifting, spread }: OnBarrel = {},
): Layout {
  const radiusMm = diameterMm / 2;
  const rolled = spread ? `${spread.radiusMm}${spread.lines}` : 'flat';
  const ruled = `${radiusMm}|${rules.leastWebMm}|${rules.leastBridgeMm}|${rules.leastOpeningMm}|${rolled}|`;
  const laid = new Map<DesignElement, LaidElement>();
  // What takes the room that is left comes when all else has its place.
  for (const element of [...design.elements.filter((e) => !takesRoom(e)), ...design.elements.filter(takesRoom)]) {
    const face = 'face' in element ? faces.get(element.face) : undefined;
    const beside = takesRoom(element) ? [...laid.values()].map((part) => part.shapes) : [];
    // Tried at several sizes, and again whenever a thing beside it changes: the same size is then the very same shapes.
    const layAlone = (e: DesignElement): LaidElement => {
      const lay = () => ({ ...layElement(e, radiusMm, rules, faces), face, beside: [] });
      return store ? store.getOrMake(`alone|${ruled}${JSON.stringify(e)}`, lay, (known) => known.face === face) : lay();
    };
    const lay = () => {
      const flat = takesRoom(element)
        ? layInRoom(element, beside, radiusMm, rules, layAlone)
        : layElement(element, radiusMm, rules, faces);
      return { ...spreadElement(element, flat, faces, spread), face, beside };
    };
    const fits = (known: LaidElement) => known.face === face && sameParts(known.beside, beside);
    laid.set(element, store ? store.getOrMake(ruled + JSON.stringify(element), lay, fits) : lay());
  }
  const parts: Layout[] = design.elements.flatMap((element) => laid.get(element) ?? []);
  if (lifting) {
    const lay = () => ({ ...layLifting(lifting, radiusMm), face: undefined, beside: [] });
    parts.push(store ? store.getOrMake(`lifting|${radiusMm}|${JSON.stringify(lifting)}`, lay) : lay());
  }
  return {
    shapes: parts.flatMap((part) => part.shapes),
    extents: parts.flatMap((part) => part.extents),
    findings: parts.flatMap((part) => part.findings),
  };
}

function sameParts(as: readonly Shapes[], bs: readonly Shapes[]): boolean {
  return as.length === bs.length && as.every((part, i) => part === bs[i]);
}

/** What goes round the centre stays as it is: it would no longer be round. */
function spreadElement(element: DesignElement, laid: Layout, faces: FaceSource, spread: Spread | undefined): Layout {
  if (!spread || element.kind === 'ringText' || element.kind === 'border') return laid;
  return spreadLayout(laid, spread, element.kind === 'lineText' && faces.get(element.face)?.joins === true);
}

function layElement(element: DesignElement, radiusMm: number, rules: LayoutRules, faces: FaceSource): Layout {
  switch (element.kind) {
    case 'ringText':
      return layRingText(element, radiusMm, rules, faces);
    case 'lineText':
      return layLineText(element, radiusMm, rules, faces);
    case 'border':
      return layBorder(element, radiusMm, rules);
    case 'motif':
      return layMotif(element, radiusMm, faces);
    case 'artwork':
      return layArtwork(element, radiusMm);
  }
}
