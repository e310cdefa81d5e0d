import { orderWords, type Standing, standingOf } from '../approval/standing.ts';
import { showFingerprint } from '../design/show-fingerprint.ts';
import type { Design } from '../design/schema.ts';
import { dayWords } from '../sentences/day-words.ts';
import { PAPER_EN } from '../sentences/paper-en.ts';
import type { Wording } from '../sentences/wording.ts';
import { oneLine } from './plain-text.ts';

export interface ApprovalSaid {
  readonly kind: Standing['kind'];
  /** Of the drawing, which is all that a cut file can say. */
  readonly words: Wording;
  readonly loud: boolean;
  /** Of the order: how many, for how much. Absent where nobody approved. */
  readonly order?: { readonly words: Wording; readonly loud: boolean };
}

/**
 * How a file stands to the approval, in a line for the drawing and one for the order. Name and moment stand as they are
 * carried, the moment never in another time zone: a file has the same bytes wherever it is made. Papers say the day as
 * people write it (`written`). loud: what was approved is not what this file cuts, or nothing proves that it is.
 */
export function approvalWords(
  design: Design,
  fingerprint: string,
  days: 'carried' | 'written' = 'carried',
): ApprovalSaid {
  const standing = standingOf(design, fingerprint);
  const { kind } = standing;
  if (kind === 'open') return { kind, words: PAPER_EN.say('paper.notApproved'), loud: false };
  const order = orderWords(standing.order);
  const { name, at, fingerprint: approved } = standing.approval;
  const person = oneLine(name, 60);
  const moment = at ? `, ${oneLine(at, 40)}` : '';
  const day = days === 'written' && at !== '' ? dayWords(oneLine(at, 40)) : undefined;
  const named = day === undefined ? `${person}${moment}` : PAPER_EN.say('paper.personOn', { person, day });
  const who = person === '' ? PAPER_EN.say('paper.someone') : named;
  if (kind === 'approved') {
    const { letter } = standing;
    const words = letter
      ? PAPER_EN.say('paper.approvedLetter', { who, letter })
      : PAPER_EN.say('paper.approvedBy', { who });
    return { kind, words, loud: false, order };
  }
  const values = { who, approved: showFingerprint(oneLine(approved, 64)) || '–', now: showFingerprint(fingerprint) };
  return { kind, words: PAPER_EN.say(kind === 'short' ? 'paper.byEye' : 'paper.notThis', values), loud: true, order };
}

/** The same in English; what is loud in capitals at first. order: a line of its own, empty where nobody approved. */
export function approvalOf(
  design: Design,
  fingerprint: string,
): { readonly text: string; readonly loud: boolean; readonly order: string } {
  const { words, loud, order } = approvalWords(design, fingerprint);
  const said = (of: { readonly words: Wording; readonly loud: boolean }): string =>
    of.loud ? of.words.english.replace(/^[^:]*/, (begin) => begin.toUpperCase()) : of.words.english;
  return { text: said({ words, loud }), loud, order: order ? oneLine(said(order), 400) : '' };
}
