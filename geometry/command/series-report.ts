import type { Verdict } from '../findings.ts';
import { type Cell, CSV_BEGIN, csvLine } from '../files/csv.ts';

export interface RowReport {
  readonly line: number;
  readonly name: string;
  readonly fingerprint: string;
  /** failed: the row could not be filled in. */
  readonly verdict: Verdict | 'failed';
  /** Why it failed or stops; empty otherwise. */
  readonly reason: string;
  readonly files: readonly string[];
}

const COLUMNS = ['line', 'name', 'fingerprint', 'verdict', 'reason', 'files'];

export function reportHead(): string {
  return `${CSV_BEGIN}${csvLine(COLUMNS)}`;
}

export function reportLine({ line, name, fingerprint, verdict, reason, files }: RowReport): string {
  const cells: Cell[] = [line, name, fingerprint, verdict, reason, files.join(' ')];
  return csvLine(cells);
}

export function reportJson(title: string, rows: readonly RowReport[]): string {
  return `${JSON.stringify({ title, rows }, null, 1)}\n`;
}
