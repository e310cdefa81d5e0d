import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { approve } from '../../geometry/approval/approve.ts';
import { standingOf } from '../../geometry/approval/standing.ts';
import { differenceShapes } from '../../geometry/approval/difference-shapes.ts';
import { cutFiles } from '../../geometry/command/make-order.ts';
import { canonicalJson } from '../../geometry/design/canonical-json.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { designText } from '../../geometry/design/write-design.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { planPlates } from '../../geometry/pipeline/plan-plates.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { packDesign } from '../../web/handover/link/pack-design.ts';
import { readLink } from '../../web/handover/link/read-link.ts';
import { makeFiles } from '../../web/worker/make-files.ts';
import { regionAreaMm2 } from '../../geometry/measure/ring.ts';
import type { Region } from '../../geometry/shapes.ts';
import { smallDesign } from '../order-file/sound-order.ts';
import { demo, DEMOS } from './demos.ts';

const folder = mkdtempSync(join(tmpdir(), 'approval-'));
afterAll(() => rmSync(folder, { recursive: true }));

const AT = '2027-01-04T09:30:00+01:00';

function asApproved(design: Design): Design {
  return approve(design, { name: 'Ada Pell', at: AT, how: 'link', fingerprint: fingerprintOf(design) });
}

function throughLink(design: Design): Design {
  const packed = packDesign(design);
  const back = 'fragment' in packed ? readLink(packed.fragment) : packed;
  if (!('design' in back)) throw new Error('the link does not come back');
  return back.design;
}

function throughFile(design: Design): Design {
  const read = readDesign(designText(design));
  if ('problem' in read) throw new Error(read.problem);
  return read.design;
}

async function cut(design: Design): Promise<ReadonlyMap<string, string>> {
  const { faces } = await loadFaces(design);
  return new Map(cutFiles(design, planPlates(design, faces, createStore(), BUILT_IN)).map((f) => [f.name, f.text]));
}

/** As the page's worker makes them. */
async function cutByWorker(design: Design): Promise<ReadonlyMap<string, string>> {
  const { faces } = await loadFaces(design);
  const wanted = design.plates.flatMap(({ id }) => (['dxf', 'svg'] as const).map((kind) => ({ kind, plateId: id })));
  const store = createStore();
  const made = await makeFiles(
    design,
    wanted,
    (d, id, book) => Promise.resolve({ plate: makePlate(d, id, faces, store, book) }),
    BUILT_IN,
  );
  if (!('files' in made)) throw new Error('the worker made none');
  return new Map(made.files.map((f) => [f.name, new TextDecoder().decode(f.bytes)]));
}

function command(name: string, design: Design, ...more: string[]) {
  const [file, out] = [join(folder, `${name}.json`), join(folder, name)];
  writeFileSync(file, designText(design));
  const run = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'geometry/command/make-command.ts', file, '--out', out, ...more],
    {
      encoding: 'utf8',
    },
  );
  const read = (file: string) => readFileSync(join(out, file), 'utf8');
  return { status: run.status, said: run.stdout, complained: run.stderr, read };
}

describe('the cut files of an approved design', { timeout: 120_000 }, () => {
  it('are the same bytes wherever they are made', async () => {
    const design = asApproved(demo('golden-wedding'));
    const files = await cut(design);
    expect(files.size).toBe(design.plates.length * 2);
    for (const text of files.values()) expect(text).toContain(`Approved by Ada Pell, ${AT}`);
    expect(await cut(throughLink(design))).toEqual(files);
    expect(await cut(throughFile(throughLink(design)))).toEqual(files);
    expect(await cutByWorker(design)).toEqual(files);
    const run = command('golden', design);
    for (const [file, text] of files) expect(run.read(file)).toBe(text);
  });
});

describe('the command', { timeout: 120_000 }, () => {
  const approved = smallDesign('OAK');
  const changed: Design = { ...smallDesign('OAT'), approval: approved.approval! };

  it('says how a design stands, and with --approved-only cuts what was approved', () => {
    const run = command('approved', approved, '--approved-only');
    expect([run.status, run.complained]).toEqual([0, '']);
    expect(run.said).toContain('Approved by O. Marrow, 2026-11-26T10:00:00.000Z');
    expect((JSON.parse(run.read('findings.json')) as { approval: object }).approval).toEqual({
      standing: 'approved',
      name: 'O. Marrow',
      at: '2026-11-26T10:00:00.000Z',
      how: 'link',
      fingerprint: fingerprintOf(approved),
    });
  });
  it.each([
    ['changed', changed, 'the design was changed after it was approved'],
    ['open', { ...approved, approval: undefined }, 'nobody approved this design'],
  ])('refuses a design that is %s', (name, design, why) => {
    const run = command(name, design, '--approved-only', '--even-so');
    expect(run.status).toBe(2);
    expect(run.complained.trim()).toBe(
      `No cut files written: ${why}. Have it approved as it is, or leave --approved-only out.`,
    );
    expect(() => run.read('spec-sheet.pdf')).toThrow();
    expect(JSON.parse(run.read('findings.json'))).toMatchObject({ approval: { standing: name } });
  });
});

describe('the command, of an order', { timeout: 120_000 }, () => {
  const many = (design: Design, quantity: number): Design => ({
    ...design,
    plates: design.plates.map((p) => ({ ...p, quantity })),
  });
  const twelve = asApproved(many(smallDesign('OAK'), 12));
  const fifty = many(twelve, 50);

  it('refuses 50 where 12 were approved, and with --cut-approved cuts the drawing all the same', () => {
    const refused = command('fifty', fifty, '--approved-only');
    expect([refused.status, refused.complained.trim()]).toEqual([
      2,
      'No cut files written. Order not as approved: Large: 50 off (approved: 12). ' +
        'Have the order approved as it is, or cut by --cut-approved.',
    ]);
    const cut = command('fifty-cut', fifty, '--cut-approved');
    expect(cut.status).toBe(0);
    expect(cut.said).toContain('ORDER NOT AS APPROVED: Large: 50 off (approved: 12)');
    expect(command('twelve', twelve, '--approved-only').status).toBe(0);
    const zip = command('fifty-zip', fifty, '--order');
    expect([zip.status, zip.complained]).toEqual([
      1,
      expect.stringMatching(/^No order written\. Order not as/) as string,
    ]);
  });
});

describe('a link', () => {
  it.each(DEMOS)('carries the approval and what was approved of %s in less than 2,000 characters', (_, design) => {
    const approved = asApproved({ ...design, options: [{ id: 'option-1', name: 'Plain', stock: design.stock }] });
    const changed: Design = { ...approved, title: 'Other', bridges: { ...approved.bridges, manner: 'band' } };
    for (const sent of [approved, changed]) {
      const packed = packDesign(sent);
      expect('fragment' in packed && packed.fragment.length).toBeLessThan(2000);
      const back = throughLink(sent);
      expect(canonicalJson(back)).toBe(canonicalJson(sent));
      expect(standingOf(back, fingerprintOf(back))).toEqual(standingOf(sent, fingerprintOf(sent)));
    }
  });
  it('leaves other revisions out, and the approved one too where it does not fit', () => {
    const approved = asApproved(demo('golden-wedding'));
    const [first] = approved.revisions!;
    const more: Design = {
      ...approved,
      revisions: [
        { ...first!, letter: 'A', approval: undefined },
        { ...first!, letter: 'B' },
      ],
    };
    expect(throughLink(more).revisions?.map((r) => r.letter)).toEqual(['B']);
    // Noise that does not pack: one drawing goes into the link, two do not.
    const noise = (seed: number) =>
      Array.from(
        { length: 900 },
        (_, i) => `L${((i * 7919 * seed) % 99_991) / 1e5} ${((i * 104_729 * seed) % 99_989) / 1e5}`,
      ).join('');
    const drawn = (seed: number): Design => ({
      ...approved,
      elements: [
        {
          kind: 'artwork',
          id: 'a',
          name: 'a',
          path: `M0 0${noise(seed)}Z`.slice(0, 9000).replace(/[^Z]$/, 'Z'),
          x: 0,
          y: 0,
          size: 1,
          turnDeg: 0,
          around: 'once',
        },
      ],
    });
    const large: Design = {
      ...drawn(3),
      revisions: [{ ...first!, design: { ...first!.design, elements: drawn(5).elements } }],
    };
    expect(throughLink(large).revisions).toBeUndefined();
    expect(throughLink(large).approval).toEqual(approved.approval);
  });
  it('with values that no approval has is refused', () => {
    const bad = { ...demo('golden-wedding'), approval: { name: 'Ada', at: AT, how: 'shouted', fingerprint: '' } };
    const packed = packDesign(bad as unknown as Design);
    expect('fragment' in packed && readLink(packed.fragment)).toMatchObject({
      problem: expect.stringMatching(/./) as string,
    });
  });
});

describe('the picture of a difference', () => {
  const plateOf = async (design: Design) => {
    const { faces } = await loadFaces(design);
    return makePlate(design, 'p', faces, createStore(), BUILT_IN);
  };
  const size = (regions: readonly Region[]) => regions.reduce((sum, r) => sum + regionAreaMm2(r), 0);

  it('is empty for the same plate, and adds up to the difference of areas for another', async () => {
    const [oak, oat] = [await plateOf(smallDesign('OAK')), await plateOf(smallDesign('OAT'))];
    expect(differenceShapes(oak, oak)).toEqual({ onlyBefore: [], onlyAfter: [] });
    const { onlyBefore, onlyAfter } = differenceShapes(oak, oat);
    expect(onlyBefore.length).toBeGreaterThan(0);
    expect(onlyAfter.length).toBeGreaterThan(0);
    expect(size(onlyAfter) - size(onlyBefore)).toBeCloseTo(oat.measures.openAreaMm2 - oak.measures.openAreaMm2, 0);
    expect(differenceShapes(oat, oak)).toEqual({ onlyBefore: onlyAfter, onlyAfter: onlyBefore });
  });
  it('leaves out slivers that nobody sees', () => {
    const square = (size: number) => ({
      openings: [
        {
          id: 'o',
          elementIds: [],
          word: '',
          region: {
            outer: [
              { x: 0, y: 0 },
              { x: size, y: 0 },
              { x: size, y: 10 },
              { x: 0, y: 10 },
            ],
            holes: [],
          },
        },
      ],
    });
    expect(differenceShapes(square(10), square(10.004)).onlyAfter).toEqual([]);
    expect(differenceShapes(square(10), square(10.02)).onlyAfter).toHaveLength(1);
  });
});
