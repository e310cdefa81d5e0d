/** A point of a TrueType contour, in font units; off the curve it pulls it. */
export interface GlyfPoint {
  readonly x: number;
  readonly y: number;
  readonly on: boolean;
}

type Contours = readonly (readonly GlyfPoint[])[];

/** A glyph made of glyphs made of glyphs: no sound font goes deeper than a few. */
const DEEPEST = 8;
/** Those of glyphs within glyphs count each time: parts that double eight times over must end. */
const MOST_POINTS = 50_000;

/** Contours of the glyph at an index, out of the tables glyf and loca (OpenType 1.9). Throws on a damaged glyph. */
export function glyfReader(glyf: DataView, loca: DataView, long: boolean, count: number): (index: number) => Contours {
  const startOf = (index: number) => (long ? loca.getUint32(4 * index) : 2 * loca.getUint16(2 * index));

  let points = 0;

  function read(index: number, depth: number): Contours {
    if (index >= count || depth > DEEPEST) throw new Error(`no glyph ${index}`);
    const at = startOf(index);
    if (at === startOf(index + 1)) return [];
    const contours = glyf.getInt16(at);
    return contours >= 0 ? simple(glyf, at + 10, contours) : composite(at + 10, depth);
  }

  function composite(at: number, depth: number): Contours {
    const out: (readonly GlyfPoint[])[] = [];
    for (let more = true; more;) {
      const flags = glyf.getUint16(at);
      const part = read(glyf.getUint16(at + 2), depth + 1);
      const words = (flags & 1) !== 0;
      const offsets = (flags & 2) !== 0;
      const argument = (n: 0 | 1): number =>
        words
          ? offsets
            ? glyf.getInt16(at + 4 + 2 * n)
            : glyf.getUint16(at + 4 + 2 * n)
          : offsets
            ? glyf.getInt8(at + 4 + n)
            : glyf.getUint8(at + 4 + n);
      const [first, second] = [argument(0), argument(1)];
      at += words ? 8 : 6;
      const f2Dot14 = (n: number) => glyf.getInt16(at + 2 * n) / 16384;
      // x' = a x + c y, y' = b x + d y; they stand in the file as xscale, scale01, scale10, yscale.
      let [a, b, c, d] = [1, 0, 0, 1];
      if (flags & 8) [a, d, at] = [f2Dot14(0), f2Dot14(0), at + 2];
      else if (flags & 64) [a, d, at] = [f2Dot14(0), f2Dot14(1), at + 4];
      else if (flags & 128) [a, b, c, d, at] = [f2Dot14(0), f2Dot14(1), f2Dot14(2), f2Dot14(3), at + 8];
      let [dx, dy] = [first, second];
      if (!offsets) {
        // two points that shall lie on each other, by their numbers
        const [fixed, moved] = [out.flat()[first], part.flat()[second]];
        if (!fixed || !moved) throw new Error('no such point');
        dx = fixed.x - (a * moved.x + c * moved.y);
        dy = fixed.y - (b * moved.x + d * moved.y);
      }
      for (const contour of part) {
        points += contour.length + 1;
        if (points > MOST_POINTS) throw new Error('a glyph of too many points');
        out.push(contour.map((p) => ({ x: a * p.x + c * p.y + dx, y: b * p.x + d * p.y + dy, on: p.on })));
      }
      more = (flags & 32) !== 0;
    }
    return out;
  }

  return (index) => {
    points = 0;
    return read(index, 0);
  };
}

function simple(glyf: DataView, start: number, contours: number): Contours {
  let at = start;
  const ends = Array.from({ length: contours }, (_, i) => glyf.getUint16(at + 2 * i));
  at += 2 * contours;
  at += 2 + glyf.getUint16(at);
  const count = (ends.at(-1) ?? -1) + 1;
  const flags: number[] = [];
  while (flags.length < count) {
    const flag = glyf.getUint8(at++);
    const times = flag & 8 ? glyf.getUint8(at++) + 1 : 1;
    for (let n = 0; n < times; n++) flags.push(flag);
  }
  const along = (short: number, same: number): number[] => {
    let value = 0;
    return flags.map((flag) => {
      if (flag & short) value += flag & same ? glyf.getUint8(at++) : -glyf.getUint8(at++);
      else if (!(flag & same)) {
        value += glyf.getInt16(at);
        at += 2;
      }
      return value;
    });
  };
  const [xs, ys] = [along(2, 16), along(4, 32)];
  const points = flags.map((flag, i) => ({ x: xs[i] ?? 0, y: ys[i] ?? 0, on: (flag & 1) !== 0 }));
  return ends.map((end, i) => points.slice(i === 0 ? 0 : (ends[i - 1] ?? 0) + 1, end + 1));
}
