import { Resvg } from '@resvg/resvg-js';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { MOTIFS } from '../../geometry/motifs/catalogue.ts';
import { makeMotif } from './make-motif.ts';

/**
 * A picture of all motifs, bridged as they would be cut: large, and small beside it at the same scale of paper.
 * `npx tsx tests/motifs/sheet.ts OUT.png [ID,ID ...]`
 */
const [out = 'out/motifs.png', only] = process.argv.slice(2);
const CELL = 230;
const COLUMNS = 5;
const shown = MOTIFS.filter((m) => !only || only.split(',').includes(m.id));
const cells = shown.map((motif, i) => {
  const [x, y] = [(i % COLUMNS) * CELL, Math.floor(i / COLUMNS) * (CELL + 30)];
  const large = picture(motif.id, 100, 150);
  const small = picture(motif.id, 30, 45);
  return `<g transform="translate(${x} ${y})"><g transform="translate(90 115)">${large.svg}</g><g transform="translate(195 150)">${small.svg}</g><text x="6" y="${CELL + 8}" font-size="11" font-family="Source Sans 3, sans-serif">${motif.id} ${large.says} / ${small.says}</text></g>`;
});
const rows = Math.ceil(shown.length / COLUMNS);
const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${COLUMNS * CELL}" height="${rows * (CELL + 30)}"><rect width="100%" height="100%" fill="#f4efe4"/>${cells.join('')}</svg>`;
mkdirSync(dirname(out), { recursive: true });
writeFileSync(out, new Resvg(svg).render().asPng());
console.log(`${shown.length} motifs on ${out}`);

function picture(id: string, heightMm: number, tall: number): { svg: string; says: string } {
  const started = performance.now();
  const plate = makeMotif(id, heightMm);
  const ms = performance.now() - started;
  const scale = Math.min(tall / heightMm, tall / (heightMm * plate.width));
  const d = plate.result.openings
    .flatMap((o) => [o.region.outer, ...o.region.holes])
    .map((ring) => `M${ring.map((p) => `${(p.x * scale).toFixed(2)} ${(-p.y * scale).toFixed(2)}`).join('L')}Z`)
    .join('');
  const m = plate.result.measures;
  return {
    svg: `<path d="${d}" fill="#2a211b" fill-rule="evenodd"/>`,
    says: `${plate.result.verdict} i${m.islands} b${m.bridges} ${ms.toFixed(0)}ms`,
  };
}
