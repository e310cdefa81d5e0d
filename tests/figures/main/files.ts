import { perimeterMm, regionAreaMm2, signedAreaMm2 } from '../../../geometry/measure/ring.ts';
import { polylinePoints, readDxf } from '../../readers/dxf-reader.ts';
import { ezdxfVersion, readWithEzdxf } from '../../readers/ezdxf-reader.ts';
import { svgPathPoints } from '../../readers/svg-reader.ts';
import { type Claim, once, rounded } from '../claim.ts';
import { demoPlates, type DemoPlate } from './demo-plates.ts';

/** What the written files say, read back by readers that share nothing with the writers. */
export const FILE_CLAIMS: readonly Claim[] = [
  {
    name: 'ezdxf-audit-errors',
    wanted: '0 over all demo plates',
    async measure() {
      const read = await readByEzdxf();
      if (!read) return { value: 'not measured here: no python3-ezdxf', unit: '', ok: true };
      const errors = read.reduce((sum, file) => sum + file.errors + file.fixes, 0);
      return { value: errors, unit: `errors in ${read.length} files`, ok: read.length > 0 && errors === 0 };
    },
  },
  {
    name: 'files-in-millimetres',
    wanted: 'all: $INSUNITS is 4',
    async measure() {
      const plates = await demoPlates();
      const right = plates.filter(({ dxf }) => readDxf(dxf).header['$INSUNITS'] === 4).length;
      return { value: right, unit: `of ${plates.length} files`, ok: plates.length > 0 && right === plates.length };
    },
  },
  {
    name: 'rim-diameter-error',
    wanted: 'at most 0.001, one circle a file',
    async measure() {
      const errors = (await demoPlates()).map(({ dxf, plate }) => {
        const circles = readDxf(dxf).entities.filter(({ type, layer }) => type === 'CIRCLE' && layer === 'RIM');
        return circles.length === 1 ? Math.abs((circles[0]?.radius ?? NaN) * 2 - plate.diameterMm) : Infinity;
      });
      const worst = Math.max(...errors);
      return { value: rounded(worst), unit: 'mm', ok: worst <= 0.001 };
    },
  },
  {
    name: 'area-of-dxf-svg-and-plate',
    wanted: 'agree within 0.1',
    async measure() {
      const worst = Math.max(...(await demoPlates()).flatMap((demo) => spreads(demo, 'areaMm2')));
      return { value: rounded(worst * 100), unit: '%', ok: worst <= 0.001 };
    },
  },
  {
    name: 'length-of-dxf-svg-and-plate',
    wanted: 'agree within 0.1',
    async measure() {
      const worst = Math.max(...(await demoPlates()).flatMap((demo) => spreads(demo, 'lengthMm')));
      return { value: rounded(worst * 100), unit: '%', ok: worst <= 0.001 };
    },
  },
];

const readByEzdxf = once(async () => {
  if (ezdxfVersion() === undefined) return undefined;
  return (await demoPlates()).map(({ dxf }) => readWithEzdxf(dxf));
});

interface Sum {
  readonly areaMm2: number;
  readonly lengthMm: number;
}

/** How far DXF and SVG stand from the plate's own openings, as shares. */
function spreads({ dxf, svg, plate }: DemoPlate, what: keyof Sum): number[] {
  const { entities } = readDxf(dxf);
  const fromDxf = sumOf(entities.filter((e) => e.layer === 'OPENINGS').map((e) => polylinePoints(e)));
  const fromSvg = sumOf([...svg.matchAll(/<path[^>]* d="([^"]*)"/g)].map(([, d = '']) => svgPathPoints(d)));
  const rings = plate.openings.flatMap(({ region }) => [region.outer, ...region.holes]);
  const own: Sum = {
    areaMm2: plate.openings.reduce((sum, { region }) => sum + regionAreaMm2(region), 0),
    lengthMm: rings.reduce((sum, ring) => sum + perimeterMm(ring), 0),
  };
  return [fromDxf, fromSvg].map((sum) => Math.abs(sum[what] / own[what] - 1));
}

/** Shoelace area and length; holes run against their outer rings, so that signs sum up. */
function sumOf(rings: readonly { x: number; y: number }[][]): Sum {
  return {
    areaMm2: Math.abs(rings.reduce((sum, ring) => sum + signedAreaMm2(ring), 0)),
    lengthMm: rings.reduce((sum, ring) => sum + perimeterMm(ring), 0),
  };
}
