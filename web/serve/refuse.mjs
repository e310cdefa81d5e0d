const SENTENCES = {
  400: ['Bad Request', 'This request can not be read. Type the address of the page anew.'],
  403: [
    'Forbidden',
    'This file holds the shop’s inner costs. Publish it without them: npm run -s shop -- publish FILE --out FOLDER',
  ],
  404: ['Not Found', 'There is no such file.'],
  405: ['Method Not Allowed', 'This server only reads.'],
  408: ['Request Timeout', 'The request came too slowly. Try again.'],
  414: ['URI Too Long', 'This address is too long.'],
  421: [
    'Misdirected Request',
    'This server does not answer to that name. Start it with --name NAME if the name is yours.',
  ],
  431: ['Request Header Fields Too Large', 'The head of this request is too large.'],
  500: ['Internal Server Error', 'The file could not be read. Try again.'],
};

const BY_CODE = { HPE_HEADER_OVERFLOW: 431, ERR_HTTP_REQUEST_TIMEOUT: 408, CONNECT: 405 };

/** Says no in one sentence; nobody keeps that answer. */
export function refuse(response, status) {
  const [title, sentence] = SENTENCES[status];
  response.writeHead(status, title, {
    'Content-Type': 'text/plain; charset=utf-8',
    'Cache-Control': 'no-store',
    'X-Content-Type-Options': 'nosniff',
    ...(status === 405 && { Allow: 'GET, HEAD' }),
  });
  response.end(`${sentence}\n`);
}

/** Says no where what came is no request at all, and ends the connection. */
export function refuseOnSocket(error, socket) {
  socket.on('error', () => undefined);
  if (!socket.writable || error.code === 'ECONNRESET') return void socket.destroy();
  const status = BY_CODE[error.code] ?? 400;
  const [title, sentence] = SENTENCES[status];
  const head = ['Content-Type: text/plain; charset=utf-8', `Content-Length: ${Buffer.byteLength(sentence) + 1}`];
  socket.end(`HTTP/1.1 ${status} ${title}\r\n${head.join('\r\n')}\r\nConnection: close\r\n\r\n${sentence}\n`, () =>
    socket.destroy(),
  );
}
