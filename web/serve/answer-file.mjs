import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { extname, sep } from 'node:path';
import { FRAME_POLICY, PAGE_POLICY } from './policy.mjs';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
};

/** Codings of which the build lays a copy beside a file (precompress.ts), the smaller first. */
const CODINGS = { br: '.br', gzip: '.gz' };

/**
 * Answers with a file, or with the copy that was compressed at the build, or 304 when the caller has it already (RFC
 * 9110, 8.4, 12.5.3 and 13.1.2). Ranges are not served: 14.2 lets a server leave them, and our files are small.
 */
export async function answerFile(request, response, file) {
  const { path, size, mtimeMs, coding } = await smallest(file, request.headers['accept-encoding']);
  const tag = `W/"${size.toString(16)}-${Math.round(mtimeMs).toString(16)}${coding ? `-${coding}` : ''}"`;
  const headers = {
    ETag: tag,
    Vary: 'Accept-Encoding',
    // Built files carry their content's mark in the name; the page and its offline worker must always be the newest.
    'Cache-Control': file.path.includes(`${sep}assets${sep}`) ? 'public, max-age=31536000, immutable' : 'no-cache',
    'X-Content-Type-Options': 'nosniff',
    'Content-Security-Policy': `${PAGE_POLICY}; ${FRAME_POLICY}`,
    'Referrer-Policy': 'no-referrer',
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Resource-Policy': 'same-origin',
  };
  if (isKnown(request.headers['if-none-match'], tag)) {
    response.writeHead(304, headers);
    return void response.end();
  }
  response.writeHead(200, {
    ...headers,
    'Content-Type': TYPES[extname(file.path)] ?? 'application/octet-stream',
    'Content-Length': size,
    ...(coding && { 'Content-Encoding': coding }),
  });
  if (request.method === 'HEAD' || size === 0) return void response.end();
  send(path, size, response);
}

/** Exactly size bytes, or a broken connection: a file that shrinks meanwhile must not leave the caller waiting. */
function send(path, size, response) {
  const stream = createReadStream(path, { end: size - 1 });
  let sent = 0;
  stream.on('data', (piece) => (sent += piece.length));
  stream.on('error', () => response.destroy());
  stream.on('end', () => {
    if (sent < size) response.destroy();
  });
  // Whoever hangs up leaves no file open behind.
  response.on('close', () => stream.destroy());
  stream.pipe(response);
}

async function smallest(file, accepted) {
  for (const [coding, end] of Object.entries(CODINGS)) {
    if (!accepts(accepted, coding)) continue;
    const copy = await stat(file.path + end).catch(() => undefined);
    // A copy older than its file tells of what the file was.
    if (copy?.isFile() && copy.mtimeMs >= file.mtimeMs) {
      return { path: file.path + end, size: copy.size, mtimeMs: copy.mtimeMs, coding };
    }
  }
  return file;
}

/** True when the caller takes that coding: named, or all are, and not with a weight of 0. */
function accepts(header = '', coding) {
  const weights = new Map();
  for (const part of header.toLowerCase().split(',').slice(0, 20)) {
    const [name, ...rest] = part.split(';').map((piece) => piece.trim());
    const weight = rest.find((piece) => piece.startsWith('q='));
    weights.set(name, weight === undefined ? 1 : Number(weight.slice(2)));
  }
  return (weights.get(coding) ?? weights.get('*') ?? 0) > 0;
}

function isKnown(header, tag) {
  if (header === undefined) return false;
  const bare = (text) => text.trim().replace(/^W\//, '');
  return header.trim() === '*' || header.split(',').some((one) => bare(one) === bare(tag));
}
