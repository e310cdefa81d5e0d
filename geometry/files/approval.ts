import type { Design } from '../design/schema.ts';
import { oneLine } from './plain-text.ts';

/**
 * How a file stands to the approval, in one line. Approvals carry the whole fingerprint or its first 8 digits.
 * loud: what was approved is not what this file cuts.
 */
export function approvalOf(design: Design, fingerprint: string): { readonly text: string; readonly loud: boolean } {
  const { approval } = design;
  if (!approval) return { text: 'Not yet approved', loud: false };
  const by = `${oneLine(approval.name, 60) || 'someone'}${approval.at ? `, ${oneLine(approval.at, 20)}` : ''}`;
  const same = approval.fingerprint.length >= 8 && approval.fingerprint.startsWith(fingerprint);
  if (same) return { text: `Approved by ${by}`, loud: false };
  const other = oneLine(approval.fingerprint, 8) || 'none';
  return { text: `NOT THE APPROVED DESIGN: ${by} approved ${other}, this is ${fingerprint}`, loud: true };
}
