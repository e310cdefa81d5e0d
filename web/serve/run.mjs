import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { installWhatIsMissing, ROOT } from './install.mjs';

// `node web/serve/run.mjs TOOL ...ARGUMENTS`: runs a tool of node_modules, after installing what is missing.

const [tool, ...args] = process.argv.slice(2);
if (!tool) {
  console.error('Say which tool to run: node web/serve/run.mjs TOOL ...ARGUMENTS');
  process.exit(1);
}
installWhatIsMissing();

// By node itself and not through npx: a signal then ends the tool, and nothing is left running.
const child = spawn(process.execPath, [binOf(tool), ...args], { cwd: ROOT, stdio: 'inherit' });
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill(signal));
child.on('exit', (code, signal) => process.exit(signal ? 1 : (code ?? 1)));

function binOf(name) {
  const folder = join(ROOT, 'node_modules', { tsc: 'typescript' }[name] ?? name);
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return join(folder, typeof bin === 'string' ? bin : bin[name]);
}
