import { readFile } from 'node:fs/promises';
import { register } from 'node:module';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

// `node --import THIS FILE`: TypeScript loaded with its types taken off and nothing put in. tsx names every inner
// function as it is made, which costs a sweep a quarter of its time.

if (import.meta.url.endsWith('#hooks') === false) register(`${import.meta.url}#hooks`);

export async function load(url, context, next) {
  if (!url.endsWith('.ts')) return next(url, context);
  const source = await readFile(fileURLToPath(url), 'utf8');
  const { outputText } = ts.transpileModule(source, {
    compilerOptions: { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022, verbatimModuleSyntax: true },
  });
  return { format: 'module', source: outputText, shortCircuit: true };
}
