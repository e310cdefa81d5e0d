import { createStore } from 'zustand/vanilla';

/** What is being brought in: a motif to pick, or a file to look at; and in whose place, if in any. */
export type Importing =
  | { readonly kind: 'motif'; readonly inPlaceOf?: string | undefined }
  | { readonly kind: 'file'; readonly file: File; readonly inPlaceOf?: string | undefined };

/** One import at a time; undefined: none. */
export const importing = createStore<{ readonly now: Importing | undefined }>(() => ({ now: undefined }));

export function begin(what: Importing): void {
  importing.setState({ now: what });
}

export function end(): void {
  importing.setState({ now: undefined });
}
