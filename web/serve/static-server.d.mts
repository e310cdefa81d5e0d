import type { Server } from 'node:http';

export interface ServeGuard {
  readonly names?: readonly string[];
  readonly guardCosts?: boolean;
}

export function createStaticServer(
  folder: string,
  instead?: Readonly<Record<string, string>>,
  guard?: ServeGuard,
): Server;
export function listenOnFreePort(server: Server, port: number, strict: boolean, host?: string): Promise<number>;
