import type { NetworkInterfaceInfo } from 'node:os';

export const LOOPBACK_NAMES: readonly string[];
export function hostOf(text: string | undefined): string | undefined;
export function isPublic(name: string): boolean;
export function addressesOf(
  host: string,
  interfaces?: Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>,
): string[];
export function ownNames(host: string, named?: readonly string[]): string[];
