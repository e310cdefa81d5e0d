import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isIPv6 } from 'node:net';
import { buildWhenStale, DIST } from './build.mjs';
import { installWhatIsMissing } from './install.mjs';
import { innerCostsIn } from './inner-costs.mjs';
import { addressesOf, isPublic, ownNames } from './own-names.mjs';
import { readAsked } from './read-asked.mjs';
import { createStaticServer, listenOnFreePort } from './static-server.mjs';

// `npm start [-- [--port 4173] [--stock FILE] [--shop FILE] [--host ADDRESS] [--name NAME] [--with-inner-costs]]`:
// installs what is missing, builds what is stale, serves dist/ on this machine only or on the address told, with a
// shop's own files in place of the built ones. A file with inner costs is not shown to strangers unless that is told.
// The server lives in this very process, so that Ctrl-C leaves nothing running.

const USUAL_PORT = 4173;

// Whoever reads our lines may stop reading; the page is served all the same.
process.stdout.on('error', () => undefined);
process.stderr.on('error', () => undefined);

const { asked, problem } = readAsked(process.argv.slice(2));
if (problem !== undefined) stop(problem);
installWhatIsMissing();
buildWhenStale();

const host = asked.host ?? '127.0.0.1';
const open = [...addressesOf(host), ...asked.names].find(isPublic);
const instead = {
  ...(asked.stock !== undefined && { '/stock.json': asked.stock }),
  ...(asked.shop !== undefined && { '/shop.json': asked.shop }),
};
const guardCosts = open !== undefined && !asked.withInnerCosts;
const full = guardCosts ? ['/stock.json', '/shop.json'].find(holdsCosts) : undefined;
if (full !== undefined) {
  stop(
    `${open} can be reached by strangers, and ${instead[full] ?? join(DIST, full)} holds inner costs. ` +
      'Publish it without them: npm run -s shop -- publish FILE --out FOLDER. ' +
      'If everybody may read them, add --with-inner-costs.',
  );
}
try {
  const server = createStaticServer(DIST, instead, { names: ownNames(host, asked.names), guardCosts });
  const port = await listenOnFreePort(server, asked.port ?? USUAL_PORT, asked.port !== undefined, host);
  const addresses = addressesOf(host).map((address) => `http://${isIPv6(address) ? `[${address}]` : address}:${port}/`);
  console.log(`Bridgehead is ready: ${addresses.join(' or ')} (Ctrl-C ends it)`);
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => process.exit(0));
} catch (error) {
  stop(sentenceOf(error));
}

function holdsCosts(path) {
  const file = instead[path] ?? join(DIST, path);
  return existsSync(file) && innerCostsIn(path, readFileSync(file, 'utf8'));
}

function sentenceOf({ code, message }) {
  const port = asked.port ?? USUAL_PORT;
  if (code === 'EADDRINUSE')
    return `Port ${port} is taken. End what uses it, or name another: npm start -- --port 4300`;
  if (code === 'EADDRNOTAVAIL') return `${host} is no address of this machine. Name one that is, or --host 0.0.0.0.`;
  return `The page could not be served: ${message}`;
}

function stop(sentence) {
  console.error(sentence);
  process.exit(1);
}
