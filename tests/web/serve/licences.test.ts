import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { runtimePackages } from '../../../web/serve/licence-notice.ts';
import { licenceOf } from '../../../web/serve/licence-text.ts';

const packages = runtimePackages(fileURLToPath(new URL('../../..', import.meta.url)));
const licences = packages.map(licenceOf);

describe('the packages that run with the page', () => {
  it('bring a licence text each, or the standard text of the licence they name', () => {
    expect(packages.length).toBeGreaterThan(80);
    // Words that stand in every licence that lets others use a work: MIT, ISC, BSD, Apache, BSL, OFL, Unlicense, 0BSD.
    const isText = (text: string): boolean =>
      text.length > 400 && /permission|permitted|hereby|free and unencumbered/i.test(text);
    expect(licences.filter(({ text }) => !isText(text)).map(({ title }) => title)).toEqual([]);
  });

  it('say so where the text is the standard one, with the holders they name', () => {
    const without = licences.filter(({ text }) => text.startsWith('The package brings no licence file'));
    expect(without.map(({ title }) => title.split(' ')[0]).sort()).toEqual([
      '@react-three/fiber',
      'brotli',
      'clipper-lib',
      'dfa',
      'fontkit',
    ]);
    expect(without.filter(({ text }) => !/^Copyright.*[A-Z]/m.test(text))).toEqual([]);
    expect(without.find(({ title }) => title.startsWith('clipper-lib'))?.text).toMatch(/Boost[^]*Tom Wu/);
    expect(without.find(({ title }) => title.startsWith('brotli'))?.text).toMatch(/MERCHANTABILITY[^]*Apache License/);
  });

  it('stay under licences that let a shop use, change and pass them on', () => {
    // One names its licence in its text alone.
    const named = licences.map(({ title, text }) =>
      title.endsWith('see below') && /^Permission is hereby granted, free of charge/m.test(text)
        ? 'MIT'
        : title.split(': ')[1]!,
    );
    const free = /^(?:MIT|ISC|BSD-[23]-Clause|0BSD|Apache-2\.0|BSL|OFL-1\.1|Zlib|Unlicense|MPL-2\.0)/;
    expect(named.filter((name) => !free.test(name.replace(/^\(+/, '')))).toEqual([]);
  });
});
