import * as z from 'zod/mini';
import { REASONS_EN } from '../sentences/reasons-en.ts';
import type { ReasonKey } from '../sentences/say.ts';
import { STOCK_FORMAT, STOCK_VERSION } from './stock-limits.ts';

// The library would otherwise write code of its own at run time, which the page's policy forbids.
z.config({ jitless: true });

/**
 * What a shop keeps on its rack and what its machines can do, one JSON file that the shop edits. Millimetres, seconds
 * and minutes as the names say, money in the file's currency. Every number that a shop may question says where it comes
 * from.
 */

const text = (most: number) => z.string().check(z.minLength(1), z.maxLength(most));
const id = z.string().check(z.maxLength(60), z.regex(/^[A-Za-z0-9][\w.-]*$/));
const source = text(300);
const number = (least: number, most: number) => z.number().check(z.gte(least), z.lte(most));
const sourced = (least: number, most: number) => z.strictObject({ value: number(least, most), source });
const THICKEST_MM = 200;

const familySchema = z.enum(['metal', 'plastic', 'wood']);
const kind = z.enum(['laser', 'jet', 'router', 'plasma']);
/** What in a material makes it dangerous: chlorine (PVC, vinyl), chromium (stainless steel). */
const holds = z.enum(['chlorine', 'chromium']);

/** why names a sentence that the program has in all its languages; reason is one of the shop's own. */
const grounds = {
  why: z.optional(z.enum(Object.keys(REASONS_EN) as [ReasonKey, ...ReasonKey[]])),
  reason: z.optional(text(200)),
};
const fit = z.strictObject({ grade: z.enum(['yes', 'poor', 'never']), ...grounds });

const material = z.strictObject({
  id,
  name: text(80),
  /** What it stands, for a customer. */
  sentence: text(200),
  family: familySchema,
  holds: z.optional(z.array(holds)),
  densityKgM3: sourced(1, 30_000),
  /** How it bends, MPa; absent for film, which lies on the wood. */
  elastic: z.optional(
    z.strictObject({
      youngMPa: sourced(1, 2e6),
      poisson: sourced(0, 0.5),
      shearMPa: z.optional(sourced(1, 1e6)),
      yieldMPa: z.optional(sourced(1, 1e4)),
      hot: z.optional(z.strictObject({ atC: number(0, 2000), youngMPa: sourced(1, 2e6) })),
    }),
  ),
  /** Which of the three systems a gauge of this material means (gauges.ts). */
  gaugeSystem: z.optional(z.enum(['stainless', 'carbon', 'aluminium'])),
  /** Usual sheet, each by gauge or by mm. */
  thicknesses: z
    .array(
      z.union([
        z.strictObject({ gauge: z.int().check(z.gte(10), z.lte(26)) }),
        z.strictObject({ mm: number(0.05, THICKEST_MM) }),
      ]),
    )
    .check(z.minLength(1), z.maxLength(60)),
  /** An inner cost; absent in a file that others may read. */
  pricePerKg: z.optional(sourced(0, 1e7)),
  torch: fit,
  /** By process; a process that is absent does not cut it. */
  processes: z.record(id, fit),
});

const range = z.strictObject({ least: number(0, THICKEST_MM), most: number(0.05, THICKEST_MM), source });

/** What a process asks of a family of materials. */
const ofFamily = z.strictObject({
  /** Sheet it cuts well. */
  thicknessMm: range,
  /** Least bridge for paint: the larger of so many mm and so many thicknesses. */
  bridge: z.strictObject({ mm: number(0, 100), thicknesses: number(0, 20), source }),
});

/** One thickness of a list of speeds; between two of them speed and pierce time are taken from the line through both. */
const speedRow = z.strictObject({
  thicknessMm: number(0.05, THICKEST_MM),
  speedMmMin: number(1, 1e6),
  pierceS: number(0, 3600),
});

const process = z.strictObject({
  id,
  name: text(80),
  /** What it is good for, for somebody who has never seen it. */
  sentence: text(200),
  kind,
  /** What can hurt; local codes and trained people come first. */
  caution: text(400),
  kerfMm: sourced(0.001, 50),
  /** Narrowest opening: the larger of so many kerfs and so many thicknesses. */
  openingKerfs: sourced(1, 50),
  openingThicknesses: sourced(0, 20),
  /** Inside corners come out with at least this radius. */
  insideRadiusMm: sourced(0, 50),
  /** Least metal between two openings, thicknesses. */
  webThicknesses: sourced(0, 20),
  families: z.strictObject({
    metal: z.optional(ofFamily),
    plastic: z.optional(ofFamily),
    wood: z.optional(ofFamily),
  }),
  /** ISO 9013 for thermal cutting only; ISO 2768-1 by agreement for all else. */
  tolerance: z.discriminatedUnion('standard', [
    z.strictObject({ standard: z.literal('ISO 9013'), class: z.enum(['1', '2']), source }),
    z.strictObject({ standard: z.literal('ISO 2768'), class: z.enum(['f', 'm', 'c', 'v']), source }),
  ]),
  cutting: z.array(
    z.strictObject({ materials: z.array(id), rows: z.array(speedRow).check(z.minLength(1), z.maxLength(60)), source }),
  ),
  machine: z.strictObject({
    accelerationMmS2: sourced(1, 1e6),
    rapidMmMin: sourced(1, 1e6),
    /** How far a corner may be cut short so that the head need not stop in it. */
    cornerMm: sourced(0, 10),
    /** To raise and lower the head once. */
    raiseS: sourced(0, 600),
    leadInMm: sourced(0, 100),
    /** A cut goes on past its closing point by so much; absent: by the kind of process. */
    overlapMm: z.optional(sourced(0, 50)),
    /** Small tabs that hold pieces: how wide, and one for so much of a piece's edge; absent: by kerf and thickness. */
    tabMm: z.optional(sourced(0.1, 50)),
    tabEveryMm: z.optional(sourced(5, 10_000)),
    /** Slats the sheet lies on; 0 where there are none. */
    slatPitchMm: sourced(0, 1000),
    slatEdgeMm: sourced(0, 100),
    /** A spot cut stays hot so long. */
    coolS: sourced(0, 36_000),
    /** Left between the rims of two plates, and between a rim and the sheet's edge. */
    skeletonWebMm: sourced(0, 500),
    edgeMm: sourced(0, 500),
    /** To load a sheet, set the machine and clear it again. With the rate an inner cost, both absent as above. */
    setUpMin: z.optional(sourced(0, 10_000)),
    ratePerHour: z.optional(sourced(0, 1e7)),
  }),
});

const sheet = z.strictObject({
  id,
  widthMm: number(50, 20_000),
  heightMm: number(50, 20_000),
  /** Absent: any material may come in this size. */
  materials: z.optional(z.array(id).check(z.minLength(1))),
  /** How many there are; absent: as many as are wanted. */
  count: z.optional(z.int().check(z.gte(0), z.lte(1e6))),
  /** What a sheet costs; without one it costs its weight times the material's price. */
  prices: z.optional(
    z.array(z.strictObject({ material: id, thicknessMm: number(0.05, THICKEST_MM), price: sourced(0, 1e9) })),
  ),
  source,
});

export const stockFileSchema = z.strictObject({
  format: z.literal(STOCK_FORMAT),
  version: z.literal(STOCK_VERSION),
  /** ISO 4217. */
  currency: z.string().check(z.regex(/^[A-Z]{3}$/)),
  materials: z.array(material).check(z.minLength(1), z.maxLength(200)),
  /** The better one first: the first that can do it is offered where the chosen one cannot. */
  processes: z.array(process).check(z.minLength(1), z.maxLength(60)),
  /** Counts before all that a material says of a process or the torch. */
  neverMeet: z.array(
    z.strictObject({ holds, kind: z.enum(['laser', 'jet', 'router', 'plasma', 'torch']), ...grounds, source }),
  ),
  sheets: z.array(sheet).check(z.maxLength(500)),
  rules: z.strictObject({
    /** Heat softens and warps a bridge: wider for the torch by this factor. */
    torchFactor: sourced(1, 10),
    /** Metal to the rim: the larger of these two, and of two bridge widths. */
    rimMarginMm: sourced(0, 200),
    rimMarginThicknesses: sourced(0, 50),
    /** An island's edge between two bridges: at most so many thicknesses, within the two limits below. */
    spanThicknesses: z.strictObject({ metal: sourced(1, 1e4), plastic: sourced(1, 1e4), wood: sourced(1, 1e4) }),
    leastSpanMm: sourced(1, 1e4),
    greatestSpanMm: sourced(1, 1e4),
    /** Touch that islands are judged by: a finger or a cloth that wipes, N. */
    touchN: sourced(0.01, 1000),
    /**
     * An island may give by so many thicknesses, since from one on its edge stands clear above the sheet beside it: it
     * catches the brush and paint creeps under. Never by more than touchMm, which a hand feels as loose.
     */
    touchThicknesses: sourced(0.01, 100),
    touchMm: sourced(0.01, 100),
    /** Plastic springs back from what would leave a metal bar bent, so it may give so many times more. */
    springy: sourced(1, 100),
    /** About the gap below which sprayed paint keeps a clean edge. */
    sagMm: sourced(0.01, 100),
    /** Above this one person holds a plate over a barrel badly. */
    heavyKg: sourced(0.1, 1000),
  }),
  /** What is recommended to somebody who does not know, best first. */
  advice: z.strictObject({
    process: id,
    paint: z.array(id).check(z.minLength(1)),
    torch: z.array(id).check(z.minLength(1)),
    /** Sheet that lies flat and is not bent by handling, by the plate's diameter; the last row for all larger ones. */
    flat: z
      .array(z.strictObject({ belowMm: number(1, 1e5), thicknessMm: number(0.05, THICKEST_MM) }))
      .check(z.minLength(1)),
    source,
  }),
  /** Work by hand, and what goes around the plates; inner costs, not shown to customers, absent as above. */
  work: z.optional(
    z.strictObject({
      ratePerHour: sourced(0, 1e7),
      /** To read a design in and check it, once for each. */
      preparingMin: sourced(0, 10_000),
      finishingMinPerPlate: sourced(0, 10_000),
      finishingMinPerMetre: sourced(0, 1000),
      packingMinPerOrder: sourced(0, 10_000),
      packingMinPerPlate: sourced(0, 10_000),
      packagePerOrder: sourced(0, 1e7),
      packagePerPlate: sourced(0, 1e7),
      /** What is left of a sheet goes back on the rack when its narrower side has this; otherwise the order pays for it. */
      leastRemnantMm: sourced(0, 20_000),
      /** From so many plates of an order on, so many per cent less of all but the sheet. */
      quantitySteps: z
        .array(z.strictObject({ from: z.int().check(z.gte(1), z.lte(1e6)), percentOff: number(0, 90) }))
        .check(z.maxLength(50)),
      quantityStepsSource: source,
    }),
  ),
});

export type StockFile = z.infer<typeof stockFileSchema>;
