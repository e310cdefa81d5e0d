import * as z from 'zod/mini';
import { MOST_QUANTITY } from './limits.ts';

// The library would otherwise write code of its own at run time, which the page's policy forbids.
z.config({ jitless: true });

const day = z.string().check(z.maxLength(40));
const hash = z.string().check(z.maxLength(64));
const money = z.int().check(z.gte(-1e12), z.lte(1e12));

/** What both sides agree on beside the drawing, as it was computed once: nothing that changes later alters it. */
export const offerSchema = z.strictObject({
  /** By the shop's scheme; empty where a customer approved without a numbered offer. */
  number: z.string().check(z.maxLength(40)),
  /** The day it was made, and the last on which it holds; by ISO 8601. */
  made: day,
  validUntil: z.optional(day),
  /** Of what is cut. */
  fingerprint: hash,
  title: z.string().check(z.maxLength(120)),
  plates: z
    .array(
      z.strictObject({
        id: z.string().check(z.minLength(1), z.maxLength(60)),
        name: z.string().check(z.maxLength(60)),
        diameterMm: z.number(),
        quantity: z.int().check(z.gte(1), z.lte(MOST_QUANTITY)),
      }),
    )
    .check(z.minLength(1), z.maxLength(12)),
  /** Absent: on request. */
  price: z.optional(
    z.strictObject({
      /** ISO 4217. */
      currency: z.string().check(z.regex(/^[A-Z]{3}$/)),
      lines: z
        .array(
          z.strictObject({
            code: z.enum([
              'plate',
              'cutting',
              'openings',
              'rolling',
              'finishing',
              'design',
              'packing',
              'packing-plates',
              'quantity',
              'least-order',
            ]),
            plate: z.optional(z.string().check(z.maxLength(80))),
            count: z.number(),
            unit: z.enum(['pieces', 'metres', 'per-cent']),
            each: z.number(),
            minor: money,
          }),
        )
        .check(z.maxLength(100)),
      netMinor: money,
      tax: z.optional(
        z.strictObject({
          name: z.string().check(z.maxLength(40)),
          percent: z.number(),
          minor: money,
          included: z.boolean(),
        }),
      ),
      totalMinor: money,
      /** Working days. */
      lead: z.optional(z.strictObject({ least: z.int(), most: z.int() })),
      /** SHA-256 of the shop's prices, tax and terms that it was computed by. */
      shopPrices: z.optional(hash),
    }),
  ),
});
