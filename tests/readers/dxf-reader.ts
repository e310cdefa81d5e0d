import DxfParser from 'dxf-parser';

/** What the tests look at in a DXF file, as dxf-parser reads it: nothing of ours takes part. */
export interface DxfRead {
  readonly header: Readonly<Record<string, unknown>>;
  readonly layers: Readonly<Record<string, { readonly colorIndex?: number }>>;
  readonly entities: readonly DxfEntity[];
}

export interface DxfEntity {
  readonly type: string;
  readonly layer: string;
  readonly vertices?: readonly { readonly x: number; readonly y: number; readonly bulge?: number }[];
  readonly shape?: boolean;
  readonly radius?: number;
  readonly center?: { readonly x: number; readonly y: number };
}

export function readDxf(text: string): DxfRead {
  const read = new DxfParser().parseSync(text);
  if (!read) throw new Error('dxf-parser read nothing');
  return {
    header: read.header,
    layers: read.tables.layer.layers,
    entities: read.entities,
  };
}

/** A closed polyline with bulges as many short lines: the arc rebuilt from its centre, by the DXF reference alone. */
export function polylinePoints(entity: DxfEntity, stepMm = 0.02): { x: number; y: number }[] {
  const vertices = entity.vertices ?? [];
  return vertices.flatMap((a, i) => {
    const b = vertices[(i + 1) % vertices.length]!;
    const bulge = a.bulge ?? 0;
    if (bulge === 0) return [{ x: a.x, y: a.y }];
    const angle = 4 * Math.atan(bulge);
    // The centre lies where both ends are seen under the arc's angle: a + (b - a) (1 + i cot(angle / 2)) / 2.
    const cot = 1 / Math.tan(angle / 2);
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const [cx, cy] = [a.x + (dx - dy * cot) / 2, a.y + (dy + dx * cot) / 2];
    const radius = Math.hypot(a.x - cx, a.y - cy);
    const start = Math.atan2(a.y - cy, a.x - cx);
    const n = Math.max(1, Math.ceil((radius * Math.abs(angle)) / stepMm));
    return Array.from({ length: n }, (_, k) => ({
      x: cx + radius * Math.cos(start + (angle * k) / n),
      y: cy + radius * Math.sin(start + (angle * k) / n),
    }));
  });
}
