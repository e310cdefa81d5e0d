import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import { buildWhenStale, DIST } from './build.mjs';
import { installWhatIsMissing } from './install.mjs';
import { createStaticServer, listenOnFreePort } from './static-server.mjs';

// `npm start [-- [--port 4173] [--stock FILE] [--shop FILE]]`: installs what is missing, builds what is stale, serves dist/ on this
// machine only, with a shop's own files in place of the built ones.
// The server lives in this very process, so that Ctrl-C leaves nothing running.

const USUAL_PORT = 4173;

const asked = portAsked(process.argv.slice(2));
const stock = fileAsked(process.argv.slice(2), 'stock');
const shop = fileAsked(process.argv.slice(2), 'shop');
installWhatIsMissing();
buildWhenStale();
try {
  const server = createStaticServer(DIST, {
    ...(stock !== undefined && { '/stock.json': stock }),
    ...(shop !== undefined && { '/shop.json': shop }),
  });
  const port = await listenOnFreePort(server, asked ?? USUAL_PORT, asked !== undefined);
  console.log(`Bridgehead is ready: http://127.0.0.1:${port}/ (Ctrl-C ends it)`);
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => process.exit(0));
} catch (error) {
  console.error(
    error.code === 'EADDRINUSE'
      ? `Port ${asked ?? USUAL_PORT} is taken. End what uses it, or name another: npm start -- --port 4300`
      : `The page could not be served: ${error.message}`,
  );
  process.exit(1);
}

function portAsked(args) {
  const at = args.findIndex((arg) => arg === '--port' || arg.startsWith('--port='));
  if (at < 0) return undefined;
  const text = args[at].includes('=') ? args[at].split('=')[1] : args[at + 1];
  const port = Number(text);
  if (Number.isInteger(port) && port > 0 && port < 65536) return port;
  console.error('--port wants a whole number between 1 and 65535, such as --port 4300.');
  process.exit(1);
}

function fileAsked(args, name) {
  const at = args.findIndex((arg) => arg === `--${name}` || arg.startsWith(`--${name}=`));
  if (at < 0) return undefined;
  const file = args[at].includes('=') ? args[at].slice(args[at].indexOf('=') + 1) : args[at + 1];
  if (file && statSync(file, { throwIfNoEntry: false })?.isFile()) return resolve(file);
  console.error(`--${name} wants a file that is there, such as --${name} our-${name}.json.`);
  process.exit(1);
}
