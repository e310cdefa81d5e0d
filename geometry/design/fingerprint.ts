import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalJson } from './canonical-json.ts';
import { isText } from './kinds.ts';
import type { BridgeEdit, Design, DesignElement, PlateSpec } from './schema.ts';

/**
 * SHA-256 of what is cut, 64 hex digits. Two designs that cut the same plates from the same stock share it.
 *
 * Counted: every element in its order with text, face, place and size; the bridges; the stock with its use
 * (a torch asks for wider bridges); the plates' diameters; of the head what a plate's diameter, its openings to lift
 * it by or its rolling follow from; the data of the person's own fonts that the design uses; the rules of the shop's
 * own that its stock follows (ownRules in geometry/stock/), where they are others than those that ship.
 *
 * Not counted: title, order, options, revisions, what was accepted and the approval (paper, and the approval is made of this very
 * fingerprint); the quantity,
 * names and order of plates, the ids of plates and elements, locks and the names of drawings (another name or number
 * of the same plate is cut alike); the crown (it is checked, but the plate is flat); fonts that are carried along
 * unused.
 */
export function fingerprintOf(design: Design, shopRules?: object): string {
  const cut = { ...whatIsCut(design), shopRules };
  return bytesToHex(sha256(utf8ToBytes(canonicalJson(cut))));
}

/** SHA-256 of the whole document, 64 hex digits: also of what is on paper only, which the fingerprint leaves out. */
export function documentMark(design: Design): string {
  return bytesToHex(sha256(utf8ToBytes(canonicalJson(design))));
}

/** First 8 hex digits: what proof, spec sheet, cut files and file names show. */
export function shortFingerprint(design: Design, shopRules?: object): string {
  return fingerprintOf(design, shopRules).slice(0, 8);
}

/** Later versions of the document brought nothing that is cut: an approval outlives them. Raised when one does. */
const COUNTED_AS = 2;

function whatIsCut(design: Design): object {
  const diameters = [...new Set(design.plates.map((p) => canonicalJson(plateAsCut(p, design))))].sort();
  const faces = new Set(design.elements.flatMap((e) => (isText(e) ? [e.face] : [])));
  return {
    format: design.format,
    version: COUNTED_AS,
    surface: design.surface,
    lifting: design.lifting ?? 'none',
    head: headAsCut(design),
    diameters,
    stock: design.stock,
    bridges: { ...design.bridges, edits: design.bridges.edits.map((e) => editWithoutIds(e, design)) },
    elements: design.elements.map(elementAsCut),
    ownFaces: design.ownFaces
      .filter((f) => faces.has(f.id))
      .map((f) => ({ id: f.id, data: f.data }))
      .sort((a, b) => (a.id < b.id ? -1 : 1)),
  };
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
  return {
    source: head.source,
    ...(follows && { clearanceMm: head.clearanceMm }),
    ...(lifted && { recessMm: head.recessMm ?? 'usual' }),
  };
}

/** A ring that masks is cut by the diameter of the plate it takes in. */
export function plateAsCut(plate: PlateSpec, design: Design): unknown {
  if (plate.masks === undefined) return plate.diameter;
  return { diameter: plate.diameter, masks: design.plates.find((p) => p.id === plate.masks)?.diameter ?? 'none' };
}

/** Without what only the screen and paper know: id, lock, a drawing's name. */
export function elementAsCut(element: DesignElement): unknown {
  const { locked: _, ...cut } = element;
  return cut.kind === 'artwork' ? { ...cut, id: '', name: '' } : { ...cut, id: '' };
}

/** An edit by hand says its element by place, as the elements stand in their order without ids. */
function editWithoutIds(edit: BridgeEdit, design: Design): unknown {
  return { ...edit, id: '', element: design.elements.findIndex((e) => e.id === edit.element) };
}
