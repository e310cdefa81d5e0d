import { createServer } from 'node:http';
import { realpathSync } from 'node:fs';
import { answerFile } from './answer-file.mjs';
import { findFile } from './find-file.mjs';
import { holdsInnerCosts } from './inner-costs.mjs';
import { hostOf, LOOPBACK_NAMES } from './own-names.mjs';
import { refuse, refuseOnSocket } from './refuse.mjs';

// Limits, all common practice for a server of small files; no source.
const HEADERS_MS = 10_000;
const REQUEST_MS = 20_000;
const SILENT_MS = 30_000;
const ANSWER_MS = 5 * 60_000;
const LOOK_FOR_SLOW_MS = 2_000;
const MOST_CONNECTIONS = 500;
const MOST_HEADERS = 100;
const MOST_HEADER_BYTES = 16 * 1024;

/**
 * A server of the files in one folder: reads, never writes, and answers every request, however odd. A path that is a
 * key of instead is answered with that file of elsewhere. names: host names it may be asked by, so that no page of
 * elsewhere can read it through a name of its own (DNS rebinding). guardCosts: a shop's file with inner costs is refused.
 */
export function createStaticServer(folder, instead = {}, { names = LOOPBACK_NAMES, guardCosts = false } = {}) {
  const root = realpathSync(folder);
  const known = new Set(names.map((name) => name.toLowerCase()));

  async function answer(request, response) {
    const asked = readTarget(request);
    if (asked.status) return refuse(response, asked.status);
    if (!known.has(asked.host)) return refuse(response, 421);
    if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(response, 405);
    const found = await findFile(root, asked.path, instead);
    if (!found.file) return refuse(response, found.status);
    if (guardCosts && (await holdsInnerCosts(found))) return refuse(response, 403);
    await answerFile(request, response, found.file);
  }

  const server = createServer(
    { connectionsCheckingInterval: LOOK_FOR_SLOW_MS, maxHeaderSize: MOST_HEADER_BYTES, requireHostHeader: false },
    (request, response) => {
      // What a caller breaks off is no fault of ours; nobody is there to be told.
      request.on('error', () => undefined);
      response.on('error', () => undefined);
      const late = setTimeout(() => response.destroy(), ANSWER_MS);
      response.on('close', () => clearTimeout(late));
      // Bytes that nobody reads are not waited for: the connection ends with the answer.
      if (request.headers['transfer-encoding'] !== undefined || Number(request.headers['content-length'] ?? 0) !== 0) {
        response.setHeader('Connection', 'close');
      }
      answer(request, response).catch(() => {
        if (response.headersSent) response.destroy();
        else refuse(response, 500);
      });
    },
  );
  server.headersTimeout = HEADERS_MS;
  server.requestTimeout = REQUEST_MS;
  server.timeout = SILENT_MS;
  server.maxConnections = MOST_CONNECTIONS;
  server.maxHeadersCount = MOST_HEADERS;
  server.on('clientError', refuseOnSocket);
  // CONNECT has a socket and no answer object.
  server.on('connect', (_, socket) => refuseOnSocket({ code: 'CONNECT' }, socket));
  return server;
}

/** The first of the given port and the 20 after it that is free; with strict, the given one or an error. */
export async function listenOnFreePort(server, port, strict, host = '127.0.0.1') {
  for (let candidate = port; ; candidate++) {
    try {
      await listen(server, candidate, host);
      return server.address().port;
    } catch (error) {
      if (error.code !== 'EADDRINUSE' || strict || candidate >= port + 20) throw error;
    }
  }
}

function listen(server, port, host) {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.off('error', reject);
      // One connection that fails while it is taken up must not end all others.
      server.on('error', () => undefined);
      resolve();
    });
  });
}

/** Path and host of a request, or why there are none (RFC 9112, 3.2: path, or whole address for a proxy). */
function readTarget({ url = '', headers, httpVersion }) {
  const whole = /^http:\/\/([^/?#]*)(.*)$/i.exec(url);
  const target = whole ? whole[2] || '/' : url;
  if (url === '*') return { host: hostOf(headers.host), path: '' };
  if (!target.startsWith('/')) return { status: 400 };
  // HTTP/1.1 asks for a Host (RFC 9112, 3.2); a caller without one could be anybody.
  const host = hostOf(whole ? whole[1] : headers.host);
  if (host === undefined) return { status: httpVersion === '1.0' ? 421 : 400 };
  return { host, path: target.replace(/[?#].*$/s, '') };
}
