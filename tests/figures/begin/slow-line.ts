import { connect, createServer, type Socket } from 'node:net';

/** A line as a phone has it: milliseconds there and back, and what comes down it. */
export interface Line {
  readonly roundTripMs: number;
  readonly bitsPerSecond: number;
}

const PIECE = 1460;

/**
 * A port of this machine that leads to another one over a slow line, page and workers alike: a connection takes a round
 * trip to open, each way half a round trip, and what comes down shares one line, a packet at a time.
 */
export async function slowLine(toPort: number, { roundTripMs, bitsPerSecond }: Line): Promise<SlowLine> {
  const sockets = new Set<Socket>();
  let freeAtMs = 0;
  const server = createServer((near) => {
    const far = connect(toPort, '127.0.0.1');
    for (const socket of [near, far]) {
      sockets.add(socket);
      socket.setNoDelay(true);
      socket.on('error', () => undefined);
      socket.on('close', () => {
        sockets.delete(socket);
        near.destroy();
        far.destroy();
      });
    }
    const openedMs = performance.now() + roundTripMs;
    near.on('data', (bytes: Buffer) => {
      setTimeout(() => far.write(bytes), Math.max(0, openedMs - performance.now()) + roundTripMs / 2);
    });
    let order = Promise.resolve();
    far.on('data', (bytes: Buffer) => {
      far.pause();
      order = order.then(async () => {
        for (let at = 0; at < bytes.length; at += PIECE) {
          const piece = bytes.subarray(at, at + PIECE);
          freeAtMs = Math.max(freeAtMs, performance.now()) + (piece.length * 8000) / bitsPerSecond;
          const wait = freeAtMs - performance.now();
          setTimeout(() => near.write(piece), wait + roundTripMs / 2);
          // others take their turn on the same line
          if (wait > 2) await new Promise((go) => setTimeout(go, wait));
        }
        far.resume();
      });
    });
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const at = server.address();
  return {
    port: typeof at === 'object' && at !== null ? at.port : 0,
    end() {
      server.close();
      for (const socket of sockets) socket.destroy();
    },
  };
}

export interface SlowLine {
  readonly port: number;
  end(): void;
}
