import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import ts from 'typescript';

/** One import as it stands in a file. */
export interface Import {
  /** Path of the importing file from the project's folder, with forward slashes. */
  readonly from: string;
  /** A path of the project (`geometry/units.ts`), or a package's name (`zod`, `node:fs`). */
  readonly to: string;
  readonly kind: 'file' | 'package';
  /** Only types come over it. */
  readonly typeOnly: boolean;
  readonly line: number;
}

export interface SourceFile {
  readonly path: string;
  readonly text: string;
  readonly lines: number;
  readonly syntax: ts.SourceFile;
}

/** All TypeScript files under the given folders of the project, sorted. */
export function readSources(root: string, folders: readonly string[]): SourceFile[] {
  return folders
    .flatMap((folder) => filesUnder(join(root, folder)))
    .filter((path) => /\.tsx?$/.test(path))
    .sort()
    .map((path) => toSource(relative(root, path).split(sep).join('/'), readFileSync(path, 'utf8')));
}

export function toSource(path: string, text: string): SourceFile {
  const syntax = ts.createSourceFile(path, text, ts.ScriptTarget.ESNext, true);
  return { path, text, lines: text.split('\n').length - (text.endsWith('\n') ? 1 : 0), syntax };
}

/**
 * Every way a file can reach another: import and export statements (types too), import(), import types,
 * `new URL('./x.ts', import.meta.url)` as workers are started with.
 */
export function importsOf(file: SourceFile): Import[] {
  const found: Import[] = [];
  const add = (node: ts.Node, specifier: string, typeOnly: boolean) => {
    const { line } = file.syntax.getLineAndCharacterOfPosition(node.getStart());
    found.push({ from: file.path, ...resolve(file.path, specifier), typeOnly, line: line + 1 });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      add(node, node.moduleSpecifier.text, isTypeOnly(node));
    } else if (ts.isExportDeclaration(node) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier)) {
      add(node, node.moduleSpecifier.text, node.isTypeOnly);
    } else if (
      ts.isImportTypeNode(node) &&
      ts.isLiteralTypeNode(node.argument) &&
      ts.isStringLiteral(node.argument.literal)
    ) {
      add(node, node.argument.literal.text, true);
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const argument = node.arguments[0];
      add(
        node,
        argument && ts.isStringLiteralLike(argument) ? argument.text : '(an import that is not plain text)',
        false,
      );
    } else if (ts.isNewExpression(node) && node.expression.getText() === 'URL') {
      const argument = node.arguments?.[0];
      if (argument && ts.isStringLiteralLike(argument) && /^\.{1,2}\/.*\.tsx?$/.test(argument.text)) {
        add(node, argument.text, false);
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(file.syntax);
  return found;
}

/** Groups of files that reach each other in a circle (Tarjan's strongly connected components), each sorted. */
export function importCycles(imports: readonly Import[]): string[][] {
  const next = new Map<string, string[]>();
  for (const { from, to, kind } of imports) if (kind === 'file') next.set(from, [...(next.get(from) ?? []), to]);
  const order = new Map<string, number>();
  const low = new Map<string, number>();
  const stack: string[] = [];
  const cycles: string[][] = [];
  const visit = (file: string): number => {
    const mine = order.size;
    order.set(file, mine);
    let lowest = mine;
    stack.push(file);
    for (const to of next.get(file) ?? []) {
      if (!order.has(to)) lowest = Math.min(lowest, visit(to));
      else if (stack.includes(to)) lowest = Math.min(lowest, order.get(to) ?? mine);
    }
    low.set(file, lowest);
    if (lowest === mine) {
      const group = stack.splice(stack.indexOf(file));
      if (group.length > 1 || next.get(file)?.includes(file)) cycles.push(group.sort());
    }
    return lowest;
  };
  for (const file of next.keys()) if (!order.has(file)) visit(file);
  return cycles;
}

function isTypeOnly(node: ts.ImportDeclaration): boolean {
  const clause = node.importClause;
  if (!clause) return false;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const named = clause.namedBindings;
  if (clause.name || !named || !ts.isNamedImports(named)) return false;
  return named.elements.length > 0 && named.elements.every((element) => element.isTypeOnly);
}

function resolve(from: string, specifier: string): Pick<Import, 'to' | 'kind'> {
  const plain = specifier.replace(/\?.*$/, '');
  if (plain.startsWith('.')) return { to: join(dirname(from), plain).split(sep).join('/'), kind: 'file' };
  const [scope = plain, name] = plain.split('/');
  return { to: plain.startsWith('@') && name ? `${scope}/${name}` : scope, kind: 'package' };
}

function filesUnder(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesUnder(path) : [path];
  });
}
