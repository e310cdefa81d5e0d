import ts from 'typescript';
import { IMPURE, NO_REACT, PACKAGES, PARTS, type Part } from './house-rules.ts';
import type { Import, SourceFile } from './read-imports.ts';

/** Sentences for each import that the house rules forbid; none when all is well. */
export function forbiddenImports(imports: readonly Import[]): string[] {
  return imports.flatMap((one) => {
    const sentence = one.kind === 'file' ? judgeFile(one) : judgePackage(one);
    return sentence ? [`${one.from}:${one.line} ${sentence}`] : [];
  });
}

/** Sentences for each place where a file reaches for the page, the clock, chance or the network. */
export function impurities(file: SourceFile): string[] {
  const found: string[] = [];
  const own = declaredNames(file.syntax);
  const visit = (node: ts.Node): void => {
    const reached = reachedBy(node);
    const call = reached !== undefined && own.has(reached) ? undefined : reached;
    const rule = call && IMPURE.find((one) => one.call === call);
    if (rule) {
      const { line } = file.syntax.getLineAndCharacterOfPosition(node.getStart());
      found.push(`${file.path}:${line + 1} uses ${rule.call}: ${rule.instead}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(file.syntax);
  return found;
}

/** Sentences for exports that only pass on what another file exports. */
export function reexports(file: SourceFile): string[] {
  return file.syntax.statements
    .filter((statement) => ts.isExportDeclaration(statement) && statement.moduleSpecifier !== undefined)
    .map((statement) => {
      const { line } = file.syntax.getLineAndCharacterOfPosition(statement.getStart());
      return `${file.path}:${line + 1} passes on another file's exports: let the reader import that file itself`;
    });
}

function judgeFile(one: Import): string | undefined {
  const from = partOf(one.from);
  if (!from) return `belongs to no part of the house: add it to tests/architecture/house-rules.ts, with its imports`;
  // Pictures, styles, designs beside the code are no part.
  if (!/\.tsx?$/.test(one.to)) return undefined;
  const to = partOf(one.to);
  if (!to) return `imports ${one.to}, which is outside the house`;
  if (to.path === from.path) return undefined;
  if (to.isRoof) return `imports ${one.to}, but nothing imports ${to.path}: move the shared part down`;
  const allowed = from.may.find((rule) => one.to.startsWith(rule.replace(' (types)', '')));
  if (!allowed) {
    const list = from.may.length > 0 ? from.may.join(', ') : 'nothing';
    return `imports ${one.to}, but ${from.path} may import only ${list}; take it as an argument, or move the shared part down`;
  }
  if (allowed.endsWith('(types)') && !one.typeOnly && !from.may.includes(allowed.replace(' (types)', ''))) {
    return `imports a value from ${one.to}, but ${from.path} may take only types from there: use import type, and get the value as an argument`;
  }
  return undefined;
}

function judgePackage(one: Import): string | undefined {
  const rule = PACKAGES.find(({ name }) => name.test(one.to));
  if (!rule) return `imports ${one.to}, which no part may use yet: say in tests/architecture/house-rules.ts who may`;
  if (!rule.only.some((path) => one.from.startsWith(path))) return `imports ${one.to}: ${rule.instead}`;
  if (/^(react|react-dom)$/.test(one.to) && NO_REACT.some((path) => one.from.startsWith(path))) {
    return `imports ${one.to}: this part is plain functions, without a screen`;
  }
  return undefined;
}

function partOf(path: string): Part | undefined {
  let best: Part | undefined;
  for (const part of PARTS) {
    const matches = part.path.endsWith('/') ? path.startsWith(part.path) : path === part.path;
    if (matches && part.path.length > (best?.path.length ?? 0)) best = part;
  }
  return best;
}

/** Names that the file itself gives to something: `document` may be its own parameter. */
function declaredNames(syntax: ts.SourceFile): Set<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (
      (ts.isParameter(node) || ts.isVariableDeclaration(node) || ts.isBindingElement(node)) &&
      ts.isIdentifier(node.name)
    ) {
      names.add(node.name.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(syntax);
  return names;
}

/** The outside name that an expression reaches for, as IMPURE spells it. */
function reachedBy(node: ts.Node): string | undefined {
  if (ts.isNewExpression(node) && node.expression.getText() === 'Date' && !node.arguments?.length) return 'new Date()';
  if (ts.isPropertyAccessExpression(node)) return node.getText().replace(/^globalThis\./, '');
  if (!ts.isIdentifier(node)) return undefined;
  const { parent } = node;
  const named =
    (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
    ((ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isBindingElement(parent)) &&
      parent.name === node) ||
    ts.isParameter(parent) ||
    ts.isVariableDeclaration(parent) ||
    ts.isTypeReferenceNode(parent);
  return named ? undefined : node.text;
}
