import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { fullFolders, mutualFolders } from './architecture/folders.ts';
import { FILE_BUDGET, IMPURE, LINE_BUDGET, MOST_IN_WEB, TOP_LEVEL, WORD_BUDGET } from './architecture/house-rules.ts';
import { forbiddenImports, impurities, reexports } from './architecture/judge.ts';
import { importCycles, importsOf, readSources, toSource } from './architecture/read-imports.ts';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const house = readSources(ROOT, ['geometry', 'fonts', 'web']);
const kernel = house.filter((file) => file.path.startsWith('geometry/'));
const everything = [...house, ...readSources(ROOT, ['tests', 'e2e'])];

describe('the house', () => {
  it('has arrows only where the map allows them', () => {
    expect(house.length).toBeGreaterThan(10);
    expect(forbiddenImports(house.flatMap(importsOf))).toEqual([]);
  });

  it('has no circle of imports, types included', () => {
    expect(importCycles(everything.flatMap(importsOf))).toEqual([]);
  });

  it('has no two folders that import each other', () => {
    expect(mutualFolders(house.flatMap(importsOf))).toEqual([]);
  });

  it('has few folders in web/, and none too full', () => {
    const kept = keptFiles();
    const inWeb = new Set(kept.filter((path) => /^web\/[^/]+\//.test(path)).map((path) => path.split('/')[1]));
    expect([...inWeb].length).toBeLessThanOrEqual(MOST_IN_WEB);
    expect(fullFolders(kept, FILE_BUDGET)).toEqual([]);
  });

  it('passes nothing on: every reader imports the file itself', () => {
    expect(everything.flatMap(reexports)).toEqual([]);
    expect(everything.filter(({ path }) => /(^|\/)index\.tsx?$/.test(path)).map(({ path }) => path)).toEqual([]);
  });

  it('names files for what they do', () => {
    const vague = everything.filter(({ path }) => /^(utils?|helpers?|misc|common)\.tsx?$/.test(basename(path)));
    expect(vague.map(({ path }) => path)).toEqual([]);
  });

  it('proves a plate without the code that made it', () => {
    const reached = reachedFrom('geometry/checks/verify-plate.ts');
    expect(reached).toContain('geometry/checks/clearance-graph.ts');
    const makers = /^geometry\/(bridges|openings|layout|cutplan)\/|^geometry\/adapters\/clipper\.ts$/;
    expect(reached.filter((path) => makers.test(path))).toEqual([]);
  });

  it(`keeps every file within ${LINE_BUDGET} lines`, () => {
    const long = house.filter(({ lines }) => lines > LINE_BUDGET);
    expect(long.map(({ path, lines }) => `${path} has ${lines} lines: cut it where its second job begins`)).toEqual([]);
  });

  it('keeps page, clock, chance and network out of the kernel', () => {
    expect(kernel.flatMap(impurities)).toEqual([]);
  });

  it('can be walked by somebody new in a few minutes, and the walk names only files that are there', () => {
    const walk = readFileSync(`${ROOT}DEVELOPERS.md`, 'utf8');
    expect(walk.split(/\s+/).filter(Boolean).length).toBeLessThanOrEqual(WORD_BUDGET);
    const named = [...walk.matchAll(/`((?:geometry|fonts|web|tests|e2e)\/[\w./-]+)`/g)].map(([, path]) => path!);
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter((path) => !/NAME|GROUP|from-N/.test(path) && !existsSync(`${ROOT}${path}`))).toEqual([]);
  });

  it('holds at its top only what belongs there', () => {
    const kept = keptFiles().map((path) => path.split('/')[0] ?? '');
    const names = new Set(kept.length > 0 ? kept : readdirSync(ROOT));
    expect([...names].filter((name) => !name.startsWith('.') && !TOP_LEVEL.includes(name))).toEqual([]);
  });
});

/** All files that git keeps or would keep. */
function keptFiles(): string[] {
  const asked = ['ls-files', '--cached', '--others', '--exclude-standard'];
  return execFileSync('git', asked, { cwd: ROOT, encoding: 'utf8' }).split('\n').filter(Boolean);
}

/** All files whose code a file draws in, itself included; types draw in no code. */
function reachedFrom(path: string): string[] {
  const reached = new Set([path]);
  for (const at of reached) {
    const file = house.find((one) => one.path === at);
    for (const one of file ? importsOf(file) : []) if (one.kind === 'file' && !one.typeOnly) reached.add(one.to);
  }
  return [...reached];
}

describe('the fence itself', () => {
  const judged = (path: string, text: string) => forbiddenImports(importsOf(toSource(path, text)));

  it('sees every kind of import', () => {
    const text = `
      import type { A } from './a.ts';
      import { type B } from './b.ts';
      import { c } from './c.ts';
      type D = import('./d.ts').D;
      const e = await import('./e.ts');
      const f = new Worker(new URL('./f.ts', import.meta.url));
      export { g } from './g.ts';
      import './h.css';
      import woff from '@fontsource/cinzel/files/cinzel-latin-700-normal.woff?url';
    `;
    const seen = importsOf(toSource('web/app/x.ts', text)).map(
      ({ to, typeOnly }) => `${to}${typeOnly ? ' types' : ''}`,
    );
    expect(seen).toEqual([
      'web/app/a.ts types',
      'web/app/b.ts types',
      'web/app/c.ts',
      'web/app/d.ts types',
      'web/app/e.ts',
      'web/app/f.ts',
      'web/app/g.ts',
      'web/app/h.css',
      '@fontsource/cinzel',
    ]);
  });

  it('forbids what is not listed, types included, and lets through what is', () => {
    expect(judged('geometry/measure/x.ts', `import type { Opening } from '../bridges/types.ts';`)).toHaveLength(1);
    expect(judged('geometry/units.ts', `import { x } from './shapes.ts';`)).toHaveLength(1);
    expect(judged('geometry/layout/x.ts', `import { designSchema } from '../design/schema.ts';`)).toHaveLength(1);
    expect(judged('geometry/layout/x.ts', `import type { Design } from '../design/schema.ts';`)).toEqual([]);
    expect(judged('geometry/checks/x.ts', `const p = await import('../../web/app/page.tsx');`)).toHaveLength(1);
    expect(judged('geometry/openings/x.ts', `import ClipperLib from 'clipper-lib';`)).toHaveLength(1);
    expect(judged('geometry/adapters/x.ts', `import ClipperLib from 'clipper-lib';`)).toEqual([]);
    expect(judged('web/design/panels/x.tsx', `import { Stage } from 'react-konva';`)).toHaveLength(1);
    expect(judged('web/state/actions/x.ts', `import { useState } from 'react';`)).toHaveLength(1);
    expect(judged('web/worker/x.ts', `import type { X } from '../../geometry/command/x.ts';`)).toHaveLength(1);
    expect(judged('geometry/files/x.ts', `import x from 'left-pad';`)).toHaveLength(1);
  });

  it('finds circles, also those made of types alone', () => {
    const a = toSource('geometry/a.ts', `import type { B } from './b.ts';`);
    const b = toSource('geometry/b.ts', `import type { C } from './c.ts';`);
    const c = toSource('geometry/c.ts', `import { a } from './a.ts';`);
    expect(importCycles([a, b].flatMap(importsOf))).toEqual([]);
    expect(importCycles([a, b, c].flatMap(importsOf))).toEqual([['geometry/a.ts', 'geometry/b.ts', 'geometry/c.ts']]);
  });

  it('finds two folders that import each other, whether side by side or one within the other', () => {
    const into = (path: string, text: string) => importsOf(toSource(path, text));
    const there = into('web/a/x.ts', `import type { Y } from '../b/c/y.ts';`);
    expect(mutualFolders([...there, ...into('web/b/d/z.ts', `import { x } from '../../a/x.ts';`)])).toHaveLength(1);
    expect(mutualFolders([...there, ...into('web/b/d/z.ts', `import { y } from '../c/y.ts';`)])).toEqual([]);
    const within = [...into('web/a/x.ts', `import './b/y.ts';`), ...into('web/a/b/y.ts', `import '../z.ts';`)];
    expect(mutualFolders(within)).toHaveLength(1);
  });

  it('finds each impure name, and is not misled by comments or fields of the same name', () => {
    for (const { call } of IMPURE) {
      const text = call.startsWith('new') ? `const x = ${call};` : `const x = ${call}();`;
      expect(impurities(toSource('geometry/x.ts', text)), call).toHaveLength(1);
    }
    const innocent = `// window and document\nconst y = design.document; const z = { window: 1 }; new Date(0);\nfunction f(window: P) { return window; }`;
    expect(impurities(toSource('geometry/x.ts', innocent))).toEqual([]);
  });
});
