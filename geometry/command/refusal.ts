/** Something the person can mend; its message is the one line that is printed. */
export class Refusal extends Error {}

/** Why the system would not. */
export function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const { code } = error as NodeJS.ErrnoException;
  return code ? (REASONS[code] ?? code) : error.message;
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'not allowed',
  ENOTDIR: 'part of the path is a file',
  EEXIST: 'there is a file of that name',
  ENOSPC: 'the disk is full',
};
