import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalJson } from './canonical-json.ts';
import {
  type Bearing,
  type CutKey,
  type DESIGN_PARTS,
  EDIT_NOT_CUT,
  ELEMENT_NOT_CUT,
  FACE_PARTS,
  type HEAD_PARTS,
  pickParts,
  type PLATE_PARTS,
} from './design-parts.ts';
import { isText } from './kinds.ts';
import type { BridgeEdit, Design, DesignElement, PlateSpec } from './schema.ts';

/**
 * SHA-256 of what is cut, 64 hex digits. Two designs that cut the same plates from the same stock share it.
 *
 * What counts stands in design-parts.ts. Besides: of the head only what diameters, openings to lift by or the roll
 * follow from; of the person's own fonts those in use; of plates only how large they are, in no order. The rules of the
 * shop's own that its stock follows (ownRules in geometry/stock/) count where they are others than those that ship.
 *
 * What is not counted is paper, and the approval is made of this very fingerprint.
 */
export function fingerprintOf(design: Design, shopRules?: object): string {
  return bytesToHex(sha256(utf8ToBytes(fingerprintText(design, shopRules))));
}

/** What the fingerprint is the SHA-256 of. */
export function fingerprintText(design: Design, shopRules?: object): string {
  return canonicalJson({ ...whatIsCut(design), shopRules });
}

/** SHA-256 of the whole document, 64 hex digits: also of what is on paper only, which the fingerprint leaves out. */
export function documentMark(design: Design): string {
  return markOf(design);
}

/** SHA-256 of plain data, 64 hex digits. */
export function markOf(value: object): string {
  return bytesToHex(sha256(utf8ToBytes(canonicalJson(value))));
}

/** Later versions of the document brought nothing that is cut: an approval outlives them. Raised when one does. */
const COUNTED_AS = 2;

function whatIsCut(design: Design): object {
  const faces = new Set(design.elements.flatMap((e) => (isText(e) ? [e.face] : [])));
  const {
    plates: diameters,
    ...parts
  }: Record<CutKey<typeof DESIGN_PARTS>, unknown> = {
    surface: design.surface,
    lifting: design.lifting ?? 'none',
    head: headAsCut(design),
    plates: [...new Set(design.plates.map((p) => canonicalJson(plateAsCut(p, design))))].sort(),
    stock: design.stock,
    bridges: { ...design.bridges, edits: design.bridges.edits.map((e) => editAsCut(e, design)) },
    elements: design.elements.map(elementAsCut),
    ownFaces: design.ownFaces
      .filter((f) => faces.has(f.id))
      .map((f) => pickParts(f, FACE_PARTS, 'cut'))
      .sort((a, b) => (a.id! < b.id! ? -1 : 1)),
  };
  return { ...parts, diameters, format: design.format, version: COUNTED_AS };
}

/**
 * What of the head decides what is cut: diameters that follow from it; whether fingers find room beside a plate and
 * reach it, and with that whether its openings to lift it by are cut; on a barrel's side, the radius of the roll, where
 * nobody measured it.
 */
export function headAsCut({ head, plates, lifting, surface }: Design): unknown {
  const follows = plates.some((p) => p.diameter === 'fit' || 'share' in p.diameter);
  const lifted = lifting !== undefined && surface === 'head';
  if (!follows && !lifted && surface === 'head') return 'not needed';
  const cut: Record<CutKey<typeof HEAD_PARTS>, unknown> = {
    source: head.source,
    clearanceMm: follows ? head.clearanceMm : undefined,
    recessMm: lifted ? (head.recessMm ?? 'usual') : undefined,
  };
  return cut;
}

/** A ring that masks is cut by the diameter of the plate it takes in. */
export function plateAsCut(plate: PlateSpec, design: Design): unknown {
  const { diameter, masks } = plate;
  if (masks === undefined) return diameter;
  const cut: Record<CutKey<typeof PLATE_PARTS>, unknown> = {
    diameter,
    masks: design.plates.find((p) => p.id === masks)?.diameter ?? 'none',
  };
  return cut;
}

/** Without what only the screen and paper know: id, lock, a drawing's name. */
export function elementAsCut(element: DesignElement): unknown {
  return blankOut(element, ELEMENT_NOT_CUT);
}

/** An edit by hand says its element by place, as the elements stand in their order without ids. */
function editAsCut(edit: BridgeEdit, design: Design): unknown {
  return { ...blankOut(edit, EDIT_NOT_CUT), element: design.elements.findIndex((e) => e.id === edit.element) };
}

/** Ids and labels are emptied, what is on paper only is left out: so approvals given before still hold. */
function blankOut(value: object, parts: Readonly<Record<string, Bearing>>): object {
  const counted = Object.entries(value).filter(([key]) => parts[key] !== 'paper');
  return Object.fromEntries(counted.map(([key, part]) => [key, parts[key] === undefined ? part : '']));
}
