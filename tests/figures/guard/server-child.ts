import { createStaticServer, listenOnFreePort } from '../../../web/serve/static-server.mjs';

// The server in a process of its own, so that its end and its memory are its own: `tsx server-child.ts FOLDER`. Prints its
// port; each line that comes in is answered with its memory in bytes, after collecting what nobody holds.

const [folder = ''] = process.argv.slice(2);
const port = await listenOnFreePort(createStaticServer(folder), 4890, false);
process.send?.({ port });
process.on('message', () => {
  globalThis.gc?.();
  const { heapUsed, rss } = process.memoryUsage();
  process.send?.({ heapUsed, rss });
});
process.on('disconnect', () => process.exit(0));
