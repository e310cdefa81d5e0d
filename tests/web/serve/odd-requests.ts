import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Stands in no file that is served. */
export const SECRET = 'secret of another folder';

/** A folder as the build leaves one, small, with a way out that must not be taken. Gives its path. */
export function oddFolder(): string {
  const outside = mkdtempSync(join(tmpdir(), 'bridgehead-odd-'));
  const folder = join(outside, 'dist');
  mkdirSync(join(folder, 'assets'), { recursive: true });
  mkdirSync(join(folder, 'folder.html'));
  writeFileSync(join(outside, 'secret.txt'), SECRET);
  writeFileSync(join(folder, '.hidden'), SECRET);
  writeFileSync(join(folder, 'index.html'), '<!doctype html><p>the page</p>');
  writeFileSync(join(folder, 'empty.txt'), '');
  writeFileSync(join(folder, 'assets', 'part-1a2b.js'), 'export const part = 1;\n');
  writeFileSync(join(folder, 'stock.json'), '{}');
  symlinkSync(join(outside, 'secret.txt'), join(folder, 'way-out.txt'));
  symlinkSync(outside, join(folder, 'way-out'));
  symlinkSync('nowhere', join(folder, 'dangling.txt'));
  symlinkSync('loop.txt', join(folder, 'loop.txt'));
  return folder;
}

export interface OddRequest {
  readonly name: string;
  /** What is sent, as it stands on the wire. */
  readonly sent: string;
  /** Status codes that are right; 0 for a connection that ends without one. */
  readonly right: readonly number[];
}

const HOST = 'Host: 127.0.0.1\r\nConnection: close\r\n';
const get = (target: string, more = '') => `GET ${target} HTTP/1.1\r\n${HOST}${more}\r\n`;
const by = (method: string, more = '', body = '') => `${method} / HTTP/1.1\r\n${HOST}${more}\r\n${body}`;
const kind = (name: string, sent: string, ...right: number[]): OddRequest => ({ name, sent, right });

/** Kinds of requests that no browser sends by itself; the codes by RFC 9110 and 9112. */
export const ODD_REQUESTS: readonly OddRequest[] = [
  kind('a file as a folder', get('/index.html/'), 404),
  kind('a file as a folder, deeper', get('/index.html/index.html'), 404),
  kind('a part of 256 characters', get(`/${'a'.repeat(256)}`), 404),
  kind('a part of 256 bytes in 128 letters', get(`/${'%C3%A4'.repeat(128)}`), 404),
  kind('a path of 1900 short parts', get('/a'.repeat(950)), 404),
  kind('a path of 8000 characters', get(`/${'a/'.repeat(4000)}`), 414),
  kind('a folder', get('/assets'), 404),
  kind('a folder with a slash', get('/assets/'), 404),
  kind('a folder that is called like a page', get('/folder.html'), 404),
  kind('a zero sign', get('/index.html%00.txt'), 404),
  kind('a zero sign alone', get('/%00'), 404),
  kind('a line break', get('/index.html%0d%0aSet-Cookie:%20a=b'), 404),
  kind('two dots', get('/../secret.txt'), 404),
  kind('two dots after a folder', get('/assets/../../secret.txt'), 404),
  kind('two dots, encoded', get('/%2e%2e/secret.txt'), 404),
  kind('two dots, encoded with their slash', get('/assets%2f..%2f..%2fsecret.txt'), 404),
  kind('two dots, encoded twice', get('/%252e%252e/secret.txt'), 404),
  kind('two dots and a backslash', get('/..\\secret.txt'), 404),
  kind('a backslash, encoded', get('/..%5csecret.txt'), 404),
  kind('overlong dots (RFC 3629, 3)', get('/%c0%ae%c0%ae/secret.txt'), 400),
  kind('a percent sign alone', get('/%'), 400),
  kind('percent and no hexadecimal', get('/%zz'), 400),
  kind('half a letter in UTF-8', get('/%c3'), 400),
  kind('a hidden file', get('/.hidden'), 404),
  kind('the folder itself by a dot', get('/./index.html'), 404),
  kind('two slashes', get('//secret.txt'), 404),
  kind('two slashes and a host', get('//example.org/index.html'), 404),
  kind('a drive of Windows', get('/C:/Windows/win.ini'), 404),
  kind('a second stream of Windows', get('/index.html::$DATA'), 404),
  kind('a link out of the folder', get('/way-out.txt'), 404),
  kind('a linked folder outside', get('/way-out/secret.txt'), 404),
  kind('a link to nowhere', get('/dangling.txt'), 404),
  kind('a link to itself', get('/loop.txt'), 404),
  kind('an empty file', get('/empty.txt'), 200),
  kind('a question behind the path', get('/index.html?a=/../../secret.txt'), 200),
  kind('a mark behind the path', get('/index.html#a'), 200),
  kind('a whole address, as to a proxy', get('http://127.0.0.1/index.html'), 200),
  kind('a whole address of elsewhere', get('http://example.org/index.html'), 421),
  kind('an address of another kind', get('ftp://127.0.0.1/index.html'), 400),
  kind('no slash first', get('index.html'), 400),
  kind('no path', 'GET HTTP/1.1\r\n\r\n', 400),
  kind('a foreign host', 'GET / HTTP/1.1\r\nHost: rebinding.example\r\nConnection: close\r\n\r\n', 421),
  kind('a host that begins like ours', 'GET / HTTP/1.1\r\nHost: 127.0.0.1.example\r\nConnection: close\r\n\r\n', 421),
  kind('a host with a name before it', 'GET / HTTP/1.1\r\nHost: me@127.0.0.1\r\nConnection: close\r\n\r\n', 400),
  kind('an empty host', 'GET / HTTP/1.1\r\nHost:\r\nConnection: close\r\n\r\n', 400),
  kind('no host', 'GET / HTTP/1.1\r\nConnection: close\r\n\r\n', 400),
  kind('no host, as in 1996', 'GET / HTTP/1.0\r\n\r\n', 421),
  kind('our host with a port', 'GET / HTTP/1.1\r\nHost: localhost:4173\r\nConnection: close\r\n\r\n', 200),
  kind('our host in large letters', 'GET / HTTP/1.1\r\nHost: LOCALHOST\r\nConnection: close\r\n\r\n', 200),
  kind('HEAD', by('HEAD'), 200),
  kind('HEAD of nothing', `HEAD /nothing HTTP/1.1\r\n${HOST}\r\n`, 404),
  kind('POST with a body', by('POST', 'Content-Length: 5\r\n', 'hello'), 405),
  kind('PUT in pieces', by('PUT', 'Transfer-Encoding: chunked\r\n', '5\r\nhello\r\n0\r\n\r\n'), 405),
  kind('DELETE', by('DELETE'), 405),
  kind('OPTIONS of all', `OPTIONS * HTTP/1.1\r\n${HOST}\r\n`, 405),
  kind('TRACE', by('TRACE'), 405),
  kind('CONNECT', `CONNECT example.org:443 HTTP/1.1\r\n${HOST}\r\n`, 405),
  kind('a method nobody knows', by('BREW'), 400),
  kind('a GET with a body', by('GET', 'Content-Length: 5\r\n', 'hello'), 200),
  kind('a range', get('/index.html', 'Range: bytes=0-3\r\n'), 200),
  kind('a range beyond the end', get('/index.html', 'Range: bytes=999999-\r\n'), 200),
  kind('a thousand ranges', get('/index.html', `Range: bytes=${'0-,'.repeat(1000)}0-\r\n`), 200),
  kind('an encoding nobody knows', get('/index.html', 'Accept-Encoding: zip;q=nonsense,,;;\r\n'), 200),
  kind('a mark nobody gave', get('/index.html', 'If-None-Match: W/"x", "y\r\n'), 200),
  kind('any mark', get('/index.html', 'If-None-Match: *\r\n'), 304),
  kind('a wish to become a socket', get('/index.html', 'Upgrade: websocket\r\nConnection: Upgrade\r\n'), 200),
  kind('a wish for a go-ahead', get('/index.html', 'Expect: 100-continue\r\n'), 100, 200),
  kind('an expectation nobody knows', get('/index.html', 'Expect: the-moon\r\n'), 417),
  kind('a head of 20 kB', get('/index.html', `X-Long: ${'a'.repeat(20_000)}\r\n`), 431),
  kind('500 lines of head', get('/index.html', 'X-Short: a\r\n'.repeat(500)), 200),
  kind('a line of head without a colon', get('/index.html', 'nonsense\r\n'), 400),
  kind('a space before the colon (RFC 9112, 5.1)', get('/index.html', 'X-Space : a\r\n'), 400),
  kind('a zero sign in the head', get('/index.html', 'X-Zero: a\0b\r\n'), 400),
  kind('two lengths', by('POST', 'Content-Length: 5\r\nContent-Length: 6\r\n', 'hello'), 400),
  kind('length and pieces', by('POST', 'Content-Length: 5\r\nTransfer-Encoding: chunked\r\n', '0\r\n\r\n'), 400),
  kind('a length below nothing', by('POST', 'Content-Length: -1\r\n'), 400),
  kind('bytes that are no request', '\u0016\u0003\u0001\u0002\u0000\u0001\u0000', 400),
  kind('a version nobody knows', `GET / HTTP/9.9\r\n${HOST}\r\n`, 400),
  kind('two requests at once', get('/empty.txt').replace('close', 'keep-alive') + get('/index.html'), 200),
];

export interface Sending {
  readonly patienceMs?: number;
  /** Closes our side once all is sent, so that half a request is one that ends. */
  readonly hangUp?: boolean;
}

/** Sends bytes and gives the status of the first answer and all that came; status 0 where none did within patience. */
export function send(
  port: number,
  sent: string,
  { patienceMs = 5000, hangUp = false }: Sending = {},
): Promise<{ status: number; came: string }> {
  return new Promise((resolve) => {
    let came = '';
    const socket = connect(port, '127.0.0.1', () => {
      if (hangUp) socket.end(sent, 'latin1');
      else socket.write(sent, 'latin1');
    });
    const done = (): void => {
      socket.destroy();
      resolve({ status: Number(/^HTTP\/1\.1 (\d{3})/.exec(came)?.[1] ?? 0), came });
    };
    socket.setTimeout(patienceMs, done);
    socket.on('data', (piece) => (came += piece.toString('latin1')));
    socket.on('error', done);
    socket.on('close', done);
  });
}
