import ts from 'typescript';

/** One small change of a source file: the text from start to end becomes `becomes`. */
export interface Mutant {
  /** From the project's folder: `geometry/bridges/mirror.ts`. */
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly start: number;
  readonly end: number;
  readonly was: string;
  readonly becomes: string;
  /** The innermost function it is in, counted as in `weaveReach`; 0 is the file's own top. */
  readonly place: number;
}

/** Signs that are confused most easily; a comparison also loses or gains its border. */
const OPERATORS: Readonly<Record<string, readonly string[]>> = {
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '&&': ['||'],
  '||': ['&&'],
  '+=': ['-='],
  '-=': ['+='],
};

const CALLS: Readonly<Record<string, string>> = {
  min: 'max',
  max: 'min',
  floor: 'ceil',
  ceil: 'floor',
  sin: 'cos',
  cos: 'sin',
};

/** Every change of a file, in the order of its text. */
export function mutantsOf(file: string, text: string): readonly Mutant[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: Mutant[] = [];
  let places = 0;
  const add = (start: number, end: number, becomes: string, place: number): void => {
    const { line, character } = source.getLineAndCharacterOfPosition(start);
    const was = text.slice(start, end);
    found.push({ file, line: line + 1, column: character + 1, start, end, was, becomes, place });
  };
  const visit = (node: ts.Node, outer: number): void => {
    const place = hasBody(node) ? ++places : outer;
    if (ts.isBinaryExpression(node) && !joinsText(node)) {
      const sign = node.operatorToken;
      for (const other of OPERATORS[sign.getText()] ?? []) add(sign.getStart(), sign.end, other, place);
    } else if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) {
      add(node.getStart(), node.getStart() + 1, '+', place);
    } else if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken) {
      add(node.getStart(), node.getStart() + 1, '!!', place);
    } else if (ts.isPropertyAccessExpression(node) && node.expression.getText() === 'Math') {
      const other = CALLS[node.name.text];
      if (other !== undefined) add(node.name.getStart(), node.name.end, other, place);
    }
    // A type computes nothing.
    if (!ts.isTypeNode(node)) ts.forEachChild(node, (child) => visit(child, place));
  };
  visit(source, 0);
  return found.sort((a, b) => a.start - b.start || (a.becomes < b.becomes ? -1 : 1));
}

/** The file's text with counters: `globalThis.reached[FILE][PLACE]` becomes 1 where a place was run. Lines stay. */
export function weaveReach(file: string, text: string): string {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const pieces: { readonly at: number; readonly text: string }[] = [];
  let places = 0;
  const visit = (node: ts.Node): void => {
    if (hasBody(node)) {
      const mark = `__at[${++places}] = 1`;
      if (ts.isBlock(node.body)) pieces.push({ at: node.body.getStart() + 1, text: ` ${mark};` });
      else pieces.push({ at: node.body.getStart(), text: `(${mark}, ` }, { at: node.body.end, text: ')' });
    }
    if (!ts.isTypeNode(node)) ts.forEachChild(node, visit);
  };
  visit(source);
  let woven = text;
  // From the end, so that the places before stay true; of two at one place the first met is the outer one.
  const order = pieces.map((piece, i) => ({ ...piece, i })).sort((a, b) => b.at - a.at || b.i - a.i);
  for (const { at, text: piece } of order) woven = woven.slice(0, at) + piece + woven.slice(at);
  const name = JSON.stringify(file);
  return `const __at = ((globalThis.reached ??= {})[${name}] ??= new Uint8Array(${places + 1})); __at[0] = 1; ${woven}`;
}

export function applyMutant(text: string, { start, end, becomes }: Mutant): string {
  return text.slice(0, start) + becomes + text.slice(end);
}

type WithBody = ts.Node & { readonly body: ts.Block | ts.Expression };

function hasBody(node: ts.Node): node is WithBody {
  return ts.isFunctionLike(node) && 'body' in node && node.body !== undefined;
}

/** Text put together is not a sum. */
function joinsText({ left, right }: ts.BinaryExpression): boolean {
  return [left, right].some((side) => ts.isStringLiteralLike(side) || ts.isTemplateExpression(side));
}
