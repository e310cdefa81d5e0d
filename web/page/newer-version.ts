import { createStore, type StoreApi } from 'zustand/vanilla';

export interface NewerVersion {
  /** A newer version has been fetched and waits; undefined as long as none does. Call it to change over. */
  readonly changeOver: (() => Promise<void>) | undefined;
}

export type NewerVersionStore = StoreApi<NewerVersion>;

export function createNewerVersionStore(): NewerVersionStore {
  return createStore<NewerVersion>()(() => ({ changeOver: undefined }));
}
