/** Plane geometry of the judges themselves: nothing of it is the maker's. */
export interface XY {
  readonly x: number;
  readonly y: number;
}

export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Vertices with bulges (tan of a quarter of the arc) as points; closed ones without their first point again. */
export function flat(vertices: readonly (XY & { bulge: number })[], isClosed: boolean, errorMm: number): XY[] {
  const out: XY[] = [];
  vertices.forEach((a, i) => {
    out.push({ x: a.x, y: a.y });
    const b = vertices[i + 1] ?? (isClosed ? vertices[0] : undefined);
    if (!b || a.bulge === 0) return;
    const angle = 4 * Math.atan(a.bulge);
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const radius = chord / (2 * Math.abs(Math.sin(angle / 2)));
    const count = Math.max(2, Math.ceil(Math.abs(angle) / (2 * Math.acos(Math.max(0.5, 1 - errorMm / radius)))));
    // Seen from a, a point of the circle a share of the arc further on lies at half that share's angle off the chord.
    for (let k = 1; k < count; k++) {
      const part = (angle * k) / count;
      const far = 2 * radius * Math.sin(Math.abs(part) / 2);
      const way = Math.atan2(b.y - a.y, b.x - a.x) - (angle - part) / 2;
      out.push({ x: a.x + far * Math.cos(way), y: a.y + far * Math.sin(way) });
    }
  });
  return out;
}

export function boxAround(points: readonly XY[]): Box {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const p of points) {
    box.minX = Math.min(box.minX, p.x);
    box.minY = Math.min(box.minY, p.y);
    box.maxX = Math.max(box.maxX, p.x);
    box.maxY = Math.max(box.maxY, p.y);
  }
  return box;
}

/** Positive counter-clockwise. */
export function roundArea(loop: readonly XY[]): number {
  return loop.reduce((sum, a, i) => {
    const b = loop[(i + 1) % loop.length]!;
    return sum + (a.x - b.x) * (a.y + b.y) * 0.5;
  }, 0);
}

/** By the winding number. */
export function holds(loop: readonly XY[], p: XY): boolean {
  let winding = 0;
  loop.forEach((a, i) => {
    const b = loop[(i + 1) % loop.length]!;
    const left = (b.x - a.x) * (p.y - a.y) - (p.x - a.x) * (b.y - a.y);
    if (a.y <= p.y && b.y > p.y && left > 0) winding++;
    if (a.y > p.y && b.y <= p.y && left < 0) winding--;
  });
  return winding !== 0;
}

export function gapToRing(loop: readonly XY[], p: XY): number {
  let least = Infinity;
  for (let i = 0; i < loop.length; i++) {
    const [a, b] = [loop[i]!, loop[(i + 1) % loop.length]!];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const square = dx * dx + dy * dy;
    const t = square > 0 ? Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square)) : 0;
    least = Math.min(least, Math.hypot(a.x + t * dx - p.x, a.y + t * dy - p.y));
  }
  return least;
}

/** Points along a line, its own and others no farther apart than so much. */
export function steps(line: readonly XY[], mm: number): XY[] {
  return line.flatMap((b, i) => {
    const a = line[i - 1];
    if (!a) return [b];
    const count = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / mm));
    return Array.from({ length: count }, (_, k) => {
      const t = (k + 1) / count;
      return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
    });
  });
}

/** Truly across each other; touching ends do not count. */
export function segmentsCross(a: XY, b: XY, c: XY, d: XY): boolean {
  const side = (p: XY, q: XY, r: XY) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}
