import { LAYERS, type LayerId } from './layer.ts';

/** What is looked at, as the address says it: a report of a fault is such an address. */
export interface Address {
  /** A demo, a case of cases.ts, or the address of a design file; empty where the fragment carries the design. */
  readonly case: string;
  /** Plate of the design; empty for its first. */
  readonly plate: string;
  readonly layers: readonly LayerId[];
  /** Middle of the picture and its width, mm, y up; absent for the whole plate. */
  readonly zoom?: { readonly x: number; readonly y: number; readonly widthMm: number };
  /** Which finding is lit, counted from 1. */
  readonly finding?: number;
}

export const USUAL_LAYERS: readonly LayerId[] = ['blank', 'openings', 'bridges', 'islands', 'findings'];
const USUAL_CASE = 'golden-wedding';

/** Reads the part from the question mark on; what makes no sense is passed over. */
export function readAddress(search: string, fragment = ''): Address {
  const asked = new URLSearchParams(search);
  const named = asked.get('layers')?.split(',');
  const zoom = (asked.get('zoom') ?? '').split(',').map(Number);
  const [x = NaN, y = NaN, widthMm = NaN] = zoom;
  const finding = Number(asked.get('finding') ?? NaN);
  return {
    case: asked.get('case') ?? (fragment.length > 1 ? '' : USUAL_CASE),
    plate: asked.get('plate') ?? '',
    layers: named ? LAYERS.map(({ id }) => id).filter((id) => named.includes(id)) : USUAL_LAYERS,
    ...([x, y, widthMm].every(Number.isFinite) && widthMm > 0 && { zoom: { x, y, widthMm } }),
    ...(Number.isInteger(finding) && finding > 0 && { finding }),
  };
}

export function writeAddress(at: Address): string {
  const asked = new URLSearchParams();
  if (at.case !== '') asked.set('case', at.case);
  if (at.plate !== '') asked.set('plate', at.plate);
  asked.set('layers', at.layers.join(','));
  if (at.zoom) asked.set('zoom', [at.zoom.x, at.zoom.y, at.zoom.widthMm].map((v) => Number(v.toFixed(2))).join(','));
  if (at.finding !== undefined) asked.set('finding', `${at.finding}`);
  // Commas, colons and slashes may stand in the part after the question mark (RFC 3986, section 3.4).
  return `?${asked.toString().replaceAll('%2C', ',').replaceAll('%3A', ':').replaceAll('%2F', '/')}`;
}
