import { connect, createServer, type Socket } from 'node:net';

/** A line as a phone has it: milliseconds there and back, and what comes down it. */
export interface Line {
  readonly roundTripMs: number;
  readonly bitsPerSecond: number;
}

/** What one packet carries. */
const PACKET = 1460;

/** A timer that comes late must not leave the line idle: so much is made up for. */
const LATE_MS = 25;

type Send = (bytes: Buffer, atMs: number) => void;

/**
 * A port of this machine that leads to another one over a slow line, page and workers alike: a connection takes a round
 * trip to open, each way half a round trip, and what comes down shares one line, a packet at a time.
 */
export async function slowLine(toPort: number, { roundTripMs, bitsPerSecond }: Line): Promise<SlowLine> {
  const sockets = new Set<Socket>();
  let freeAtMs = 0;

  /** Packet for packet onto the line that all connections share. */
  async function takeTurns(bytes: Buffer, send: Send): Promise<void> {
    for (let at = 0; at < bytes.length; at += PACKET) {
      const packet = bytes.subarray(at, at + PACKET);
      freeAtMs = Math.max(freeAtMs, performance.now() - LATE_MS) + (packet.length * 8000) / bitsPerSecond;
      send(packet, freeAtMs + roundTripMs / 2);
      await until(freeAtMs);
    }
  }

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
    const up = inOrder(far);
    near.on('data', (bytes: Buffer) => {
      up(bytes, Math.max(openedMs, performance.now()) + roundTripMs / 2);
    });
    const down = inOrder(near);
    far.on('data', (bytes: Buffer) => {
      far.pause();
      void takeTurns(bytes, down).then(() => far.resume());
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

/** Writes each piece at its time, never one before another. */
function inOrder(socket: Socket): Send {
  let before = Promise.resolve();
  return (bytes, atMs) => {
    before = before.then(async () => {
      await until(atMs);
      if (socket.writable) socket.write(bytes);
    });
  };
}

async function until(atMs: number): Promise<void> {
  const wait = atMs - performance.now();
  if (wait > 1) await new Promise((go) => setTimeout(go, wait));
}
