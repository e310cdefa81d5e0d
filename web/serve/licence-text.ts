import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const TEXTS = join(import.meta.dirname, 'licences');

/** Standard texts (spdx.org/licenses) by what a package calls its licence. */
const STANDARD: Readonly<Record<string, string>> = { MIT: 'MIT.txt', BSL: 'BSL-1.0.txt', 'BSL-1.0': 'BSL-1.0.txt' };

/** What packages without a licence file say in their sources of themselves, and of others' work inside them. */
const INSIDE: Readonly<Record<string, { readonly holder?: string; readonly more?: readonly [string, string] }>> = {
  'clipper-lib': {
    holder: 'Copyright: Angus Johnson 2010-2017',
    more: ['It holds parts of jsbn, which stays under its own licence:', 'jsbn.txt'],
  },
  brotli: {
    more: [
      'Its decoder: Copyright 2013 Google Inc. All Rights Reserved. Under the Apache License 2.0:',
      'Apache-2.0.txt',
    ],
  },
};

interface PackageFile {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly author?: string | { readonly name: string } | readonly string[];
}

/** Name, version and licence of the package in a folder, and the text of that licence. Throws where none can be given. */
export function licenceOf(folder: string): { readonly title: string; readonly text: string } {
  const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as PackageFile;
  const title = `${about.name} ${about.version}: ${about.license ?? 'see below'}`;
  const file = readdirSync(folder).find((entry) => /^(?:licen[cs]e|copying)/i.test(entry));
  const text = file === undefined ? standardText(about) : readFileSync(join(folder, file), 'utf8').trim();
  return { title, text };
}

/** For a package that brings no text: that of the licence it names, with the holders it names. */
function standardText(about: PackageFile): string {
  const file = STANDARD[about.license ?? ''];
  const { holder = `Copyright (c) ${authorsOf(about)}`, more } = INSIDE[about.name] ?? {};
  if (file === undefined) throw new Error(`${about.name} has no licence text: lay it in web/serve/licences/`);
  const note = 'The package brings no licence file: this is the standard text of the licence it names.';
  const rest = more ? ['', more[0], '', read(more[1])] : [];
  return [note, '', holder, '', read(file), ...rest].join('\n');
}

function authorsOf({ name, author }: PackageFile): string {
  const named = typeof author === 'object' && 'name' in author ? author.name : author;
  if (named === undefined || named.length === 0) throw new Error(`${name} names neither licence file nor author`);
  return typeof named === 'string' ? named : named.join(', ');
}

function read(file: string): string {
  return readFileSync(join(TEXTS, file), 'utf8').trim();
}
