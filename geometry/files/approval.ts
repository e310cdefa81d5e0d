import { standingOf } from '../approval/standing.ts';
import type { Design } from '../design/schema.ts';
import { oneLine } from './plain-text.ts';

/**
 * How a file stands to the approval, in one line. Name and moment stand as they are carried, the moment never in
 * another time zone: a file has the same bytes wherever it is made.
 * loud: what was approved is not what this file cuts.
 */
export function approvalOf(
  design: Design,
  fingerprint: string,
): { readonly text: string; readonly loud: boolean } {
  const standing = standingOf(design, fingerprint);
  if (standing.kind === 'open') return { text: 'Not yet approved', loud: false };
  const { name, at, fingerprint: approved } = standing.approval;
  const by = `${oneLine(name, 60) || 'someone'}${at ? `, ${oneLine(at, 40)}` : ''}`;
  if (standing.kind === 'approved') return { text: `Approved by ${by}`, loud: false };
  const other = oneLine(approved, 8) || 'none';
  return { text: `NOT THE APPROVED DESIGN: ${by} approved ${other}, this is ${fingerprint}`, loud: true };
}
