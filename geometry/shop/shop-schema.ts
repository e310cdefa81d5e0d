import * as z from 'zod/mini';
import { stockFileSchema } from '../stock/stock-schema.ts';
import { LONGEST_LOGO, SHOP_FORMAT, SHOP_PAGES, SHOP_VERSION } from './shop-limits.ts';

// The library would otherwise write code of its own at run time, which the page's policy forbids.
z.config({ jitless: true });

/**
 * Who the shop is and what it asks of a customer: one JSON file that the shop edits. Prices are selling prices, in the
 * file's currency (not in its coins); what an order costs the shop itself stands in the stock file. A `source` is the
 * shop's own note on where a price comes from; it is not published (public-shop.ts).
 */

const text = (most: number) => z.string().check(z.minLength(1), z.maxLength(most));
const id = z.string().check(z.maxLength(60), z.regex(/^[A-Za-z0-9][\w.-]*$/));
const ids = z.array(id).check(z.minLength(1), z.maxLength(200));
const source = z.optional(text(300));
const number = (least: number, most: number) => z.number().check(z.gte(least), z.lte(most));
const whole = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most));
const money = number(0, 1e9);
const mm = number(0.05, 1e5);
const colour = z.string().check(z.regex(/^#[0-9A-Fa-f]{6}$/));

/** Own vector: areas filled with one colour each (even-odd), in the coordinates of the box. */
const drawing = z.strictObject({
  kind: z.literal('drawing'),
  /** Left, top, width, height; y grows downwards as in SVG. */
  viewBox: z.tuple([number(-1e5, 1e5), number(-1e5, 1e5), number(0.001, 1e5), number(0.001, 1e5)]),
  paths: z
    .array(
      z.strictObject({
        /** SVG path data of absolute M, L, Q, C and Z. */
        d: z.string().check(z.minLength(1), z.maxLength(100_000), z.regex(/^[MLQCZ\d\s,.eE+-]+$/)),
        colour,
      }),
    )
    .check(z.minLength(1), z.maxLength(40)),
});

/** A picture inside the file; never one to be fetched. */
const picture = z.strictObject({
  kind: z.literal('picture'),
  data: z
    .string()
    .check(
      z.maxLength(LONGEST_LOGO),
      z.regex(/^data:image\/(?:png|jpeg);base64,(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?$/),
    ),
});

/** For which plates a price counts; what is absent counts for all. The first row that fits counts. */
const counts = {
  materials: z.optional(ids),
  processes: z.optional(ids),
  /** Both ends included. */
  thicknessMm: z.optional(z.strictObject({ least: number(0, 200), most: number(0.05, 200) })),
};

const prices = z.strictObject({
  /** A plate by its diameter: the first row that is large enough counts; none larger is sold without being asked. */
  plates: z
    .array(
      z.strictObject({
        ...counts,
        upTo: z.array(z.strictObject({ diameterMm: mm, each: money })).check(z.minLength(1), z.maxLength(100)),
        source,
      }),
    )
    .check(z.minLength(1), z.maxLength(500)),
  /** What is cut, rims included; without any row the cutting is in the price of the plate. */
  cutting: z.optional(
    z
      .array(
        z.strictObject({
          ...counts,
          perMetre: money,
          /** Each opening is pierced once. */
          perOpening: z.optional(money),
          source,
        }),
      )
      .check(z.minLength(1), z.maxLength(500)),
  ),
  /** To deburr and clean a plate. */
  finishing: z.optional(z.strictObject({ perPlate: money, source })),
  /** To roll a plate to the side of a barrel; without it rolled plates are not sold without being asked. */
  rolling: z.optional(z.strictObject({ perPlate: money, source })),
  /** Once for a design, however many plates are cut of it. */
  design: z.optional(z.strictObject({ each: money, source })),
  packing: z.optional(z.strictObject({ perOrder: money, perPlate: z.optional(money), source })),
  /** From so many plates of an order on, so many per cent less of plates, cutting, finishing and rolling. */
  quantitySteps: z.optional(
    z.array(z.strictObject({ from: whole(1, 1e6), percentOff: number(0, 90) })).check(z.maxLength(50)),
  ),
  /** No order is taken for less, before tax that is added. */
  leastOrder: z.optional(z.strictObject({ amount: money, source })),
});

export const shopFileSchema = z.strictObject({
  format: z.literal(SHOP_FORMAT),
  version: z.literal(SHOP_VERSION),
  name: text(80),
  /** As it stands on a letter. */
  address: z.optional(z.array(text(80)).check(z.minLength(1), z.maxLength(8))),
  contact: z.optional(
    z.strictObject({
      phone: z.optional(z.string().check(z.maxLength(40), z.regex(/^\+?[\d(][\d ()/.-]*\d$/))),
      email: z.optional(z.string().check(z.maxLength(120), z.regex(/^[^\s@<>"]+@[^\s@<>"]+\.[^\s@<>"]+$/))),
      web: z.optional(z.string().check(z.maxLength(200), z.regex(/^https?:\/\/[^\s<>"]+$/))),
    }),
  ),
  logo: z.optional(z.discriminatedUnion('kind', [drawing, picture])),
  /** ISO 4217. */
  currency: z.string().check(z.regex(/^[A-Z]{3}$/)),
  /** included: prices hold it already; else it is added. */
  tax: z.optional(z.strictObject({ name: text(40), percent: number(0, 100), included: z.boolean() })),
  /** Without prices every order is priced on request. */
  prices: z.optional(prices),
  offer: z.optional(z.strictObject({ validDays: whole(1, 3650) })),
  /** Working days. What a day makes is in least and most; each further day's worth of plates adds one to both. */
  leadTime: z.optional(
    z.strictObject({ least: whole(0, 1000), most: whole(0, 1000), platesADay: z.optional(whole(1, 1e6)) }),
  ),
  /** Printed on proof and spec sheet. */
  /** Public key that the shop signs orders by: `npm run -s shop -- key` prints it. */
  orderKey: z.optional(z.string().check(z.regex(/^ed25519:[A-Za-z0-9+/]{43}=$/))),
  legal: z.optional(z.array(text(400)).check(z.maxLength(20))),
  /** Pages that are offered; absent: all. */
  pages: z.optional(z.array(z.enum(SHOP_PAGES)).check(z.minLength(1), z.maxLength(SHOP_PAGES.length))),
  pageSize: z.optional(z.enum(['a4', 'letter'])),
  /** A whole stock file, in place of the one beside the page. */
  stock: z.optional(stockFileSchema),
  /** Notes for the shop alone; never published. */
  private: z.optional(z.array(text(400)).check(z.maxLength(100))),
});

export type ShopFile = z.infer<typeof shopFileSchema>;
