import { fileBulge, fileNumber } from '../numbers.ts';

/** Group code and value; numbers are written as lengths are. */
export type Tag = readonly [code: number, value: string | number];

/** What a group code may carry here; everything in the file goes through one of these. */
export interface TagWriter {
  /** Names, handles and other words: ASCII, one line. */
  text(code: number, value: string): void;
  whole(code: number, value: number): void;
  length(code: number, value: number): void;
  bulge(value: number): void;
  point(x: number, y: number): void;
  point3(x: number, y: number): void;
  add(tags: readonly Tag[]): void;
  toString(): string;
}

/** Pairs of lines, group code and value, with CR LF as older controllers want them. */
export function createTags(): TagWriter {
  const lines: string[] = [];
  const tag = (code: number, value: string) => {
    lines.push(String(code).padStart(3), value);
  };
  const length = (code: number, value: number) => tag(code, fileNumber(value, `group ${code}`));
  const text = (code: number, value: string) => tag(code, asciiLine(value));
  return {
    text,
    add(tags) {
      for (const [code, value] of tags) {
        if (typeof value === 'string') text(code, value);
        else length(code, value);
      }
    },
    whole(code, value) {
      if (!Number.isInteger(value)) throw new RangeError(`group ${code} is ${value}, not a whole number`);
      tag(code, String(value));
    },
    length,
    bulge: (value) => tag(42, fileBulge(value)),
    point(x, y) {
      length(10, x);
      length(20, y);
    },
    point3(x, y) {
      length(10, x);
      length(20, y);
      length(30, 0);
    },
    toString: () => `${lines.join('\r\n')}\r\n`,
  };
}

/** A value can never end its line; other letters than ASCII are written as \U+XXXX, as the format does before 2007. */
function asciiLine(value: string): string {
  return value
    .replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, ' ')
    .replace(/[^\x20-\x7e]/g, (unit) => `\\U+${unit.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`);
}
