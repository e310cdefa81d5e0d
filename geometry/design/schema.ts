import * as z from 'zod/mini';
import {
  DESIGN_FORMAT,
  DESIGN_VERSION,
  LONGEST_PATH,
  LONGEST_TEXT,
  MOST_OPTIONS,
  MOST_QUANTITY,
  MOST_ACCEPTED,
  MOST_REVISIONS,
} from './limits.ts';
import { offerSchema } from './offer-schema.ts';
import { OWN_FACE_ID } from './own-face-id.ts';

// The library would otherwise write code of its own at run time, which the page's policy forbids.
z.config({ jitless: true });

/**
 * The design document, version 4: the one JSON that the browser, a link, a file and the headless command carry.
 *
 * Space: the plate's radius is 1, so one design serves every diameter. Angles are degrees as on a clock
 * (0 at the top, clockwise). What is absolute (bridge width, clearance, thickness) is in millimetres.
 */

/** None begins with a colon: such names stand for openings that no element draws (geometry/layout/no-element.ts). */
const id = z.string().check(z.minLength(1), z.maxLength(60), z.regex(/^[^:]/));
const share = z.number().check(z.gte(0), z.lte(1));
const clockDeg = z.number().check(z.gte(-360), z.lte(360));
const text = z.string().check(z.maxLength(LONGEST_TEXT));
/** Extra space after each letter, as a share of the cap height. */
const tracking = z.number().check(z.gte(-0.2), z.lte(2));
const face = z.string().check(z.minLength(1), z.maxLength(80));

/**
 * hidden: across the thinnest strokes; upright: up and down through the letter; band: one broad band of metal right
 * through the letter.
 */
const mannerSchema = z.enum(['hidden', 'upright', 'band']);

/** What every element may carry: how it is bridged, where that differs from the whole design; and whether it stands fast. */
const common = {
  manner: z.optional(mannerSchema),
  /** The stage does not move it. Nothing of it is cut otherwise. */
  locked: z.optional(z.boolean()),
};

/**
 * Text that fills a given extent: by its spacing (letters keep their height), or by its size (the largest at which its
 * natural width goes into the extent, never taller than asked for).
 */
const fillsBy = z.optional(z.enum(['spacing', 'size']));

/**
 * Its size is only the most it may have: it grows no larger than leaves this much metal (share of the radius, never less
 * than the stock asks) to what lies on the plate without such a wish, and to those before it that have one.
 */
const room = z.optional(share);

const ringTextSchema = z.strictObject({
  kind: z.literal('ringText'),
  id,
  text,
  face,
  /** The capitals stand between these two radii. */
  inner: share,
  outer: share,
  /** Clock angle of the middle of the text. */
  middleDeg: clockDeg,
  /** outward: heads of the letters point to the rim (usual at the top); inward: to the centre (usual at the bottom). */
  reads: z.enum(['outward', 'inward']),
  tracking,
  /** natural: as wide as the face sets it; otherwise spread or squeezed by its spacing to fill so many degrees. */
  fit: z.union([
    z.literal('natural'),
    z.strictObject({ spanDeg: z.number().check(z.gte(1), z.lte(360)), by: fillsBy }),
  ]),
  room,
  ...common,
});

const lineTextSchema = z.strictObject({
  kind: z.literal('lineText'),
  id,
  text,
  face,
  /** Middle of the text's line, at half the height of its capitals. */
  x: z.number().check(z.gte(-1), z.lte(1)),
  y: z.number().check(z.gte(-1), z.lte(1)),
  capHeight: z.number().check(z.gte(0.005), z.lte(2)),
  turnDeg: clockDeg,
  tracking,
  /** natural, or spread to fill a width (share of the radius). */
  fit: z.union([z.literal('natural'), z.strictObject({ width: z.number().check(z.gte(0.01), z.lte(2)), by: fillsBy })]),
  room,
  /** Between initials: & and + stand so high (share of the capitals), at half their height, as near to both sides. */
  joiner: z.optional(z.number().check(z.gte(0.2), z.lte(1))),
  ...common,
});

const borderSchema = z.strictObject({
  kind: z.literal('border'),
  id,
  style: z.enum(['ring', 'dashes', 'beads', 'rope']),
  inner: share,
  outer: share,
  /** How many dashes, beads or strands; auto makes them well shaped for the band. A ring takes no notice. */
  count: z.union([z.literal('auto'), z.int().check(z.gte(2), z.lte(720))]),
  ...common,
});

/** Where a drawing lies: the middle of its box, the height of its box, all as shares of the plate's radius. */
const drawn = {
  x: z.number().check(z.gte(-1), z.lte(1)),
  y: z.number().check(z.gte(-1), z.lte(1)),
  size: z.number().check(z.gte(0.005), z.lte(2)),
  turnDeg: clockDeg,
  /** Left and right changed, before it is turned. */
  mirrored: z.optional(z.boolean()),
  /** once, or so many in all, evenly round the plate's centre and turned with it; x, y and turnDeg are the first one's. */
  around: z.union([z.literal('once'), z.strictObject({ count: z.int().check(z.gte(2), z.lte(72)) })]),
  room,
};

/** One of our own drawings (geometry/motifs/). */
const motifSchema = z.strictObject({
  kind: z.literal('motif'),
  id,
  motif: z.string().check(z.minLength(1), z.maxLength(60)),
  ...drawn,
  /** What can be set about this motif (points of a star, leaves of a branch), by name; what is absent is as usual. */
  options: z.optional(z.record(z.string().check(z.maxLength(40)), z.number().check(z.gte(-10_000), z.lte(10_000)))),
  ...common,
});

/** An imported drawing: nothing but closed outlines. */
const artworkSchema = z.strictObject({
  kind: z.literal('artwork'),
  id,
  /** What the file was called; never read as anything but a name. */
  name: z.string().check(z.maxLength(120)),
  /**
   * SVG path data of M, L, Q, C and Z with absolute numbers only, filled non-zero, y up; its box is centred on the
   * origin and 1 high.
   */
  path: z.string().check(z.maxLength(LONGEST_PATH), z.regex(/^[MLQCZ0-9eE., +-]*$/)),
  ...drawn,
  ...common,
});

const elementSchema = z.discriminatedUnion('kind', [
  ringTextSchema,
  lineTextSchema,
  borderSchema,
  motifSchema,
  artworkSchema,
]);

/** Diameters are finite here; whether they make sense is said by a finding, so that nothing typed is lost. */
const diameterMm = z.number().check(z.gte(-100_000), z.lte(100_000));

export const headSchema = z.strictObject({
  source: z.discriminatedUnion('kind', [
    /** Inside the chime, on the outside of the head, along the grain of its boards and across it. */
    z.strictObject({ kind: z.literal('measured'), alongMm: diameterMm, acrossMm: diameterMm }),
    z.strictObject({ kind: z.literal('barrel'), barrel: id }),
  ]),
  /** Left free on each side between plate and chime. */
  clearanceMm: z.number().check(z.gte(0), z.lte(200)),
  /** How far the middle of the head stands above its edge. */
  crownMm: z.number().check(z.gte(-100), z.lte(200)),
  /** How deep the head lies below the chime; absent: as the barrel table or common practice says. */
  recessMm: z.optional(z.number().check(z.gte(0), z.lte(200))),
});

/** The side of the barrel about its bilge, in place of its head: the plate is rolled. */
const sideSchema = z.strictObject({
  kind: z.literal('side'),
  /** Outside diameters at the bilge and at the ends, and length over the staves; absent: as the barrel table says. */
  bilgeMm: z.optional(diameterMm),
  endMm: z.optional(diameterMm),
  lengthMm: z.optional(diameterMm),
  /** along-hoops: lines of text run round the barrel; up-staves: they run along its staves. */
  lines: z.enum(['along-hoops', 'up-staves']),
  /** Lettering is set wider towards the sides, so that it looks evenly set from straight in front. */
  spread: z.boolean(),
});

/** Openings to take the plate up by, near its rim: round holes for fingers, or slots for a hand. */
const liftingSchema = z.strictObject({
  shape: z.enum(['holes', 'slots']),
  count: z.int().check(z.gte(1), z.lte(6)),
  /** Clock angle of the first; the others follow evenly. */
  firstDeg: clockDeg,
  /** How far their middle lies from the plate's centre, share of the radius. */
  at: share,
});

export const plateSchema = z.strictObject({
  id,
  name: z.string().check(z.minLength(1), z.maxLength(60)),
  /** fit: as large as the head takes; share: that part of the fitting plate; mm: said outright. */
  diameter: z.union([
    z.literal('fit'),
    z.strictObject({ share: z.number().check(z.gte(0.01), z.lte(1)) }),
    z.strictObject({ mm: diameterMm }),
  ]),
  quantity: z.int().check(z.gte(1), z.lte(MOST_QUANTITY)),
  /** Not the design but a ring that keeps paint off the wood around that plate; its opening takes the plate in. */
  masks: z.optional(id),
});

const stockSchema = z.strictObject({
  material: id,
  thicknessMm: z.number().check(z.gte(0.05), z.lte(60)),
  process: id,
  use: z.enum(['paint', 'torch']),
});

/**
 * A place on one shape (a letter, a border) in terms that survive a change of size, place and turn:
 * 0 to 1 across and up the box of its outline, in the shape's own frame. A little outside is allowed.
 */
const onShape = z.strictObject({ x: z.number().check(z.gte(-1), z.lte(2)), y: z.number().check(z.gte(-1), z.lte(2)) });

const editOf = {
  id,
  element: id,
  /** Number of the shape in its element, counted as the layout counts, from 0. */
  shape: z.int().check(z.gte(0), z.lte(2000)),
  /** What the shape was called when it was edited (`letter O`): another letter there now is said, not guessed at. */
  label: z.string().check(z.maxLength(60)),
};

/** What a person changed about the bridges by hand. */
const bridgeEditSchema = z.discriminatedUnion('kind', [
  /** A bridge here, along this line; widthShare times the least bridge wide. */
  z.strictObject({
    kind: z.literal('keep'),
    ...editOf,
    from: onShape,
    to: onShape,
    widthShare: z.number().check(z.gte(1), z.lte(8)),
  }),
  /** None of the tool's own bridges here. */
  z.strictObject({ kind: z.literal('drop'), ...editOf, at: onShape }),
]);

const bridgesSchema = z.strictObject({
  /** auto: the rule for the stock; a width below the rule is raised to it and said. */
  width: z.union([z.literal('auto'), z.strictObject({ mm: z.number().check(z.gte(0.1), z.lte(100)) })]),
  manner: mannerSchema,
  edits: z._default(z.array(bridgeEditSchema).check(z.maxLength(500)), []),
});

/** A person's own face travels in the design, or the plate could not be made elsewhere. */
export const ownFaceSchema = z.strictObject({
  id: z.string().check(z.regex(OWN_FACE_ID)),
  name: z.string().check(z.minLength(1), z.maxLength(120)),
  /** The font file as it was given, base64. */
  data: z.string().check(z.maxLength(8_000_000)),
});

export const orderSchema = z.strictObject({
  who: z.string().check(z.maxLength(200)),
  reference: z.string().check(z.maxLength(200)),
  neededBy: z.string().check(z.maxLength(40)),
  notes: z.string().check(z.maxLength(4000)),
});

/** A moment by ISO 8601 as the clock of the person's device said it; older files may hold a bare date. */
const moment = z.string().check(z.maxLength(40));
const fingerprint = z.string().check(z.maxLength(64));

/** Who agreed to what. It holds for that fingerprint and no other, and for that offer. */
const approvalSchema = z.strictObject({
  name: z.string().check(z.maxLength(200)),
  at: moment,
  fingerprint,
  /** By a link that was answered, or signed on paper and typed in by the shop. */
  how: z.enum(['link', 'paper']),
  /** Absent in an approval of version 3 or older: it binds the drawing only. */
  offer: z.optional(offerSchema),
});

/** The same texts with another face, size or material, for the customer to choose from; what is absent is as the design has it. */
const optionSchema = z.strictObject({
  id,
  name: z.string().check(z.maxLength(60)),
  stock: z.optional(stockSchema),
  faces: z.optional(z.record(id, face)),
  plates: z.optional(z.array(plateSchema).check(z.minLength(1), z.maxLength(12))),
});

/** Somebody looked at a finding of this fingerprint and lets it be. */
const acceptanceSchema = z.strictObject({
  code: z.string().check(z.maxLength(80)),
  plate: z.optional(id),
  who: z.string().check(z.minLength(1), z.maxLength(200)),
  at: moment,
  fingerprint,
});

/** All that decides what is cut and what it is called; the fonts of one's own that it uses stay with the design. */
const cutParts = {
  title: z.string().check(z.maxLength(120)),
  head: headSchema,
  surface: z.union([z.literal('head'), sideSchema]),
  lifting: z.optional(liftingSchema),
  plates: z.array(plateSchema).check(z.minLength(1), z.maxLength(12)),
  stock: stockSchema,
  elements: z.array(elementSchema).check(z.maxLength(200)),
  bridges: bridgesSchema,
};

/** The design as it once was. */
const revisionSchema = z.strictObject({
  letter: z.string().check(z.regex(/^[A-Z]$/)),
  at: moment,
  /** In the words of whoever kept it. */
  why: z.string().check(z.maxLength(200)),
  fingerprint,
  approval: z.optional(approvalSchema),
  design: z.strictObject(cutParts),
});

export const designSchema = z.strictObject({
  format: z.literal(DESIGN_FORMAT),
  version: z.literal(DESIGN_VERSION),
  ...cutParts,
  ownFaces: z.array(ownFaceSchema).check(z.maxLength(8)),
  order: orderSchema,
  /** The ready-made beginning whose questions it answers; nothing of it is cut. */
  beginning: z.optional(id),
  /** The last that was made for it. */
  offer: z.optional(offerSchema),
  /** The own design that it was handed on from, so that an answer finds it. */
  home: z.optional(z.string().check(z.maxLength(80))),
  approval: z.optional(approvalSchema),
  options: z.optional(z.array(optionSchema).check(z.maxLength(MOST_OPTIONS))),
  accepted: z.optional(z.array(acceptanceSchema).check(z.maxLength(MOST_ACCEPTED))),
  /** Oldest first. */
  revisions: z.optional(z.array(revisionSchema).check(z.maxLength(MOST_REVISIONS))),
});

export type Design = z.infer<typeof designSchema>;
export type DesignElement = z.infer<typeof elementSchema>;
export type RingText = z.infer<typeof ringTextSchema>;
export type LineText = z.infer<typeof lineTextSchema>;
export type Border = z.infer<typeof borderSchema>;
export type Motif = z.infer<typeof motifSchema>;
export type Artwork = z.infer<typeof artworkSchema>;
export type TextElement = RingText | LineText;
export type Head = z.infer<typeof headSchema>;
export type Side = z.infer<typeof sideSchema>;
export type Lifting = z.infer<typeof liftingSchema>;
export type PlateSpec = z.infer<typeof plateSchema>;
export type Stock = z.infer<typeof stockSchema>;
export type BridgeWishes = z.infer<typeof bridgesSchema>;
export type Manner = z.infer<typeof mannerSchema>;
export type BridgeEdit = z.infer<typeof bridgeEditSchema>;
export type OwnFace = z.infer<typeof ownFaceSchema>;
export type Offer = z.infer<typeof offerSchema>;
export type Approval = z.infer<typeof approvalSchema>;
export type DesignOption = z.infer<typeof optionSchema>;
export type Acceptance = z.infer<typeof acceptanceSchema>;
export type Revision = z.infer<typeof revisionSchema>;
