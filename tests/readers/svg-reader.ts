/**
 * Path data with M, L, A and Z to points, by the W3C's own conversion from end points to centre
 * (SVG 1.1 appendix F.6.5): written from that text, sharing nothing with the writer.
 */
export function svgPathPoints(data: string, stepMm = 0.02): { x: number; y: number }[] {
  const tokens = data.match(/[MLAZ]|-?\d*\.?\d+/g) ?? [];
  const points: { x: number; y: number }[] = [];
  let i = 0;
  const number = () => {
    const value = Number(tokens[i++]);
    if (!Number.isFinite(value)) throw new Error(`not a number in path data: ${tokens[i - 1]}`);
    return value;
  };
  let at = { x: 0, y: 0 };
  while (i < tokens.length) {
    const command = tokens[i++];
    if (command === 'M' || command === 'L') {
      at = { x: number(), y: number() };
      points.push(at);
    } else if (command === 'A') {
      const [rx, , , large, sweep] = [number(), number(), number(), number(), number()];
      const to = { x: number(), y: number() };
      points.push(...arcPoints(at, to, rx, large === 1, sweep === 1, stepMm));
      at = to;
    } else if (command !== 'Z') throw new Error(`unexpected ${command} in path data`);
  }
  return points;
}

function arcPoints(
  from: { x: number; y: number },
  to: { x: number; y: number },
  radius: number,
  large: boolean,
  sweep: boolean,
  stepMm: number,
): { x: number; y: number }[] {
  const [x1, y1] = [(from.x - to.x) / 2, (from.y - to.y) / 2];
  const d2 = x1 * x1 + y1 * y1;
  const r = Math.max(radius, Math.sqrt(d2));
  const k = (large === sweep ? -1 : 1) * Math.sqrt(Math.max(0, (r * r - d2) / d2));
  const [cx, cy] = [k * y1 + (from.x + to.x) / 2, -k * x1 + (from.y + to.y) / 2];
  const start = Math.atan2(from.y - cy, from.x - cx);
  let turn = Math.atan2(to.y - cy, to.x - cx) - start;
  if (sweep && turn < 0) turn += 2 * Math.PI;
  if (!sweep && turn > 0) turn -= 2 * Math.PI;
  const n = Math.max(1, Math.ceil((r * Math.abs(turn)) / stepMm));
  return Array.from({ length: n }, (_, j) => ({
    x: cx + r * Math.cos(start + (turn * (j + 1)) / n),
    y: cy + r * Math.sin(start + (turn * (j + 1)) / n),
  }));
}
