import { createStore } from 'zustand/vanilla';

/** One order looked at at a time; undefined: none. */
export const orderLookedAt = createStore<{ readonly file: File | undefined }>(() => ({ file: undefined }));

export function lookAtOrder(file: File): void {
  orderLookedAt.setState({ file });
}

export function closeOrder(): void {
  orderLookedAt.setState({ file: undefined });
}

/** By its name or type only: what is in it is looked at afterwards. */
export function isOrderFile({ name, type }: File): boolean {
  return /\.zip$/i.test(name) || type === 'application/zip';
}
