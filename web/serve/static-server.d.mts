import type { Server } from 'node:http';

export function createStaticServer(folder: string, instead?: Readonly<Record<string, string>>): Server;
export function listenOnFreePort(server: Server, port: number, strict: boolean): Promise<number>;
