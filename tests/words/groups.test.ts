import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { first } from '../../web/words/en/first.ts';
import { wordsOf, type Group } from '../../web/words/groups.ts';
import { LANGUAGES } from '../../web/words/languages.ts';
import { importsOf, readSources, toSource, type SourceFile } from '../architecture/read-imports.ts';

/*
 * No file may say a word that has not been brought yet. Which groups are there is followed from the page's start
 * along every import: what is imported at once has what its importer has, `withWords(import(...), 'work')` adds.
 */

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const GROUPS: readonly Group[] = ['first', 'work', 'cut', 'proof'];
const ENGLISH = await Promise.all(
  GROUPS.map(async (group) => [group, group === 'first' ? first : await wordsOf('en', group)] as const),
);
const START = 'web/app/start.tsx';
/** These two say what the kernel said, in the words of the group work. */
const SAYS_FOR_THE_KERNEL = ['web/words/say/finding-words.ts', 'web/words/say/record-words.ts'];

type Groups = ReadonlySet<string>;

/** Each way out of a file, with the groups that are brought along with it. */
function waysOut(file: SourceFile): { readonly to: string; readonly brought: readonly string[] }[] {
  const later = new Map<string, readonly string[]>();
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && node.expression.getText() === 'withWords') {
      const [code, ...groups] = node.arguments;
      const path = code && /import\(\s*'([^']+)',?\s*\)/.exec(code.getText())?.[1];
      if (path === undefined) throw new Error(`${file.path}: withWords wants import('...') as it stands`);
      later.set(
        path,
        groups.map((group) => (ts.isStringLiteral(group) ? group.text : '')),
      );
    }
    ts.forEachChild(node, visit);
  };
  visit(file.syntax);
  const asPath = (specifier: string) => importsOf(toSource(file.path, `import '${specifier}'`))[0]?.to;
  const brought = new Map([...later].map(([specifier, groups]) => [asPath(specifier), groups]));
  return importsOf(file)
    .filter(({ kind, typeOnly }) => kind === 'file' && !typeOnly)
    .map(({ to }) => ({ to, brought: brought.get(to) ?? [] }));
}

/** The groups that are there whenever a file's code runs, for all files that the start reaches. */
function groupsThere(files: readonly SourceFile[], start: string): Map<string, Groups> {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const found = new Map<string, Groups>([[start, new Set(['first'])]]);
  const toDo = [start];
  for (let path = toDo.pop(); path !== undefined; path = toDo.pop()) {
    const file = byPath.get(path);
    // workers have no words; the tables of words lead to all groups
    if (file === undefined || path.startsWith('web/words/')) continue;
    const mine = found.get(path) ?? new Set();
    for (const { to, brought } of waysOut(file)) {
      const reached: Groups = new Set([...mine, ...brought]);
      const known = found.get(to);
      const both = known === undefined ? reached : new Set([...known].filter((group) => reached.has(group)));
      if (known !== undefined && both.size === known.size) continue;
      found.set(to, both);
      toDo.push(to);
    }
  }
  return found;
}

const groupOf = new Map(ENGLISH.flatMap(([group, book]) => Object.keys(book).map((p) => [p, group])));

/** `'part.word'` and `part.${word}` of one of our parts. */
function partsSaid(text: string): Set<string> {
  const said = [...text.matchAll(/['`]([a-z]\w*)\.[\w.${}-]+['`]/g)].map(([, part = '']) => part);
  return new Set(said.filter((part) => groupOf.has(part)));
}

/** `FILE says PART of GROUP, which may not be there`. */
function saidTooEarly(files: readonly SourceFile[], start: string): string[] {
  const there = groupsThere(files, start);
  return files.flatMap(({ path, text }) => {
    const groups = there.get(path);
    if (groups === undefined || !path.startsWith('web/')) return [];
    // workers and those who ask them name words for others to say
    if (path.startsWith('web/worker/') && !text.includes('words/t.ts')) return [];
    const parts = [...partsSaid(text)].filter((part) => !groups.has(groupOf.get(part) ?? ''));
    const kernel = SAYS_FOR_THE_KERNEL.includes(path) && !groups.has('work') ? ['the kernel’s sentences'] : [];
    return [...parts, ...kernel].map((part) => `${path} says ${part}, which may not be there: bring it by withWords`);
  });
}

describe('words that come later', () => {
  const files = readSources(ROOT, ['web']);

  it('are never said before they are brought', () => {
    expect(groupsThere(files, START).size).toBeGreaterThan(200);
    expect(saidTooEarly(files, START)).toEqual([]);
  });
  it('are missed by the test itself where they are not brought', () => {
    const start = toSource('web/start.ts', `import './a.ts'; withWords(import('./b.ts'), 'work'); import('./c.ts');`);
    const says = (path: string) => toSource(path, `t('page.skip'); t('take.dxf'); t(\`cut.\${x}\`);`);
    const shared = ['web/b.ts', 'web/c.ts'].map((path) => toSource(path, `import './d.ts'; t('say.add')`));
    expect(saidTooEarly([start, says('web/a.ts'), ...shared, says('web/d.ts')], 'web/start.ts')).toEqual([
      'web/a.ts says take, which may not be there: bring it by withWords',
      'web/a.ts says cut, which may not be there: bring it by withWords',
      'web/c.ts says say, which may not be there: bring it by withWords',
      'web/d.ts says take, which may not be there: bring it by withWords',
      'web/d.ts says cut, which may not be there: bring it by withWords',
    ]);
  });
  it.each(LANGUAGES.map(({ id }) => id))('stand in the same groups in %s', async (language) => {
    for (const [group, english] of ENGLISH) {
      if (english === first && language === 'en') continue;
      expect(Object.keys(english).length).toBeGreaterThan(0);
      expect(Object.keys(await wordsOf(language, group))).toEqual(expect.arrayContaining(Object.keys(english)));
    }
  });
  it('lie in the same folders and files in every language, English in the kernel aside', () => {
    const folder = (language: string) => fileURLToPath(new URL(`../../web/words/${language}`, import.meta.url));
    const filesOf = (language: string) =>
      readdirSync(folder(language), { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.json') && !/^(?:kernel|paper)\b/.test(name))
        .sort();
    expect(Object.keys(first).map((part) => `first/${part}.json`)).toEqual(
      filesOf('en').filter((f) => /^first/.test(f)),
    );
    for (const { id } of LANGUAGES) {
      expect(filesOf(id)).toEqual(filesOf('en'));
      expect(new Set(filesOf(id).map((name) => name.split('/')[0]))).toEqual(new Set(GROUPS));
    }
  });
});
