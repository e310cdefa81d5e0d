import type { Card, CardPicture } from '../card.ts';

export interface Writing {
  readonly id: string;
  readonly title: string;
  /** The design file's text. */
  readonly text: string;
  readonly changedMs: number;
  /** The revision this text was made from; undefined when there is none of that id yet. */
  readonly after: number | undefined;
}

/** written: stored, and its revision now. changed: somebody else stored another meanwhile; nothing was written. */
export type Written = { readonly kind: 'written'; readonly revision: number } | { readonly kind: 'changed' };

/**
 * Where own designs are kept. Every call may be rejected: with a QuotaExceededError when there is no room, with
 * anything else when the browser keeps nothing.
 */
export interface Shelf {
  /** All cards, binned and damaged ones too, newest first. */
  cards(): Promise<readonly Card[]>;
  /** The text of one design, its revision and when it was changed; undefined when there is no such text. */
  read(
    id: string,
  ): Promise<{ readonly text: string; readonly revision: number; readonly changedMs: number } | undefined>;
  /** Compares the revision and writes in one transaction. */
  write(writing: Writing): Promise<Written>;
  /** Takes no revision: a picture never changes what is cut. Does nothing when there is no such card. */
  setPicture(id: string, picture: CardPicture): Promise<void>;
  /** Puts a design into the bin, or takes it out again with undefined. */
  setBinned(id: string, binnedMs: number | undefined): Promise<void>;
  /** Gone for good. */
  discard(id: string): Promise<void>;
}
