import { describe, expect, it } from 'vitest';
import { fillDesign } from '../../geometry/series/fill-design.ts';
import { MOST_ROWS, readRows, type Rows } from '../../geometry/series/read-rows.ts';
import { newLineText } from '../../geometry/design/defaults.ts';
import { handDesign } from '../files/hand-plate.ts';

const utf8 = (text: string) => new TextEncoder().encode(text);
function utf16(text: string, big: boolean, mark: boolean): Uint8Array {
  const units = [...(mark ? '\uFEFF' : ''), ...text].flatMap((c) => {
    const code = c.charCodeAt(0);
    return big ? [code >> 8, code & 255] : [code & 255, code >> 8];
  });
  return Uint8Array.from(units);
}
const good = (bytes: Uint8Array): Rows => {
  const read = readRows(bytes);
  if ('problem' in read) throw new Error(read.problem);
  return read;
};
const problem = (text: string): string => {
  const read = readRows(utf8(text));
  return 'problem' in read ? read.words.key : '';
};

const TABLE = 'name,note\r\nZoë,"a ""b"", c"\r\nJosé,"two\r\nlines"\r\n';

describe('rows', () => {
  it.each([
    ['UTF-8', utf8(TABLE)],
    ['UTF-8 with a mark', utf8(`\uFEFF${TABLE}`)],
    ['UTF-16 LE with a mark', utf16(TABLE, false, true)],
    ['UTF-16 BE with a mark', utf16(TABLE, true, true)],
    ['UTF-16 LE', utf16(TABLE, false, false)],
    ['UTF-16 BE', utf16(TABLE, true, false)],
    // Windows-1252: e with acute and e with diaeresis are one byte (WHATWG Encoding Standard, index-windows-1252).
    ['Windows-1252', Uint8Array.from(TABLE, (c) => c.charCodeAt(0))],
    ['old line ends', utf8(TABLE.replaceAll('\r\n', '\r'))],
  ])('are the same in %s', (_, bytes) => {
    const { columns, rows } = good(bytes);
    expect(columns).toEqual(['name', 'note']);
    expect(rows.map((r) => r.cells)).toEqual([
      ['Zoë', 'a "b", c'],
      ['José', 'two\nlines'],
    ]);
    expect(rows.map((r) => r.line)).toEqual([2, 3]);
  });
  it.each([
    ['number;name\n1;Perry, John\n2;Perry, Jane\n', ['1', 'Perry, John']],
    ['n\tm\n1,5\t2\n', ['1,5', '2']],
    ['a,b\n"1;2",3\n', ['1;2', '3']],
    ['sep=;\na;b\n1;2\n', ['1', '2']],
    ['name\nAnna\n', ['Anna']],
  ])('find out the separator of %j', (text, first) => {
    expect(good(utf8(text)).rows[0]!.cells).toEqual(first);
  });
  it('count lines through quoted line ends and empty lines', () => {
    const { rows } = good(utf8('a;b\n1;"x\ny"\n\n;;\n2;z\n'));
    expect(rows.map((r) => r.line)).toEqual([2, 6]);
  });
  it('keep the fault of one row with that row', () => {
    const { rows } = good(utf8('a;b\n1;2;3\n4;5;;\n6\n'));
    expect(rows.map((r) => r.fault?.words.key)).toEqual(['series.cellsMany', undefined, undefined]);
    expect(rows[2]!.cells).toEqual(['6', '']);
  });
  it.each([
    ['', 'series.empty'],
    ['a;b\n', 'series.headOnly'],
    ['a;A \n1;2\n', 'series.columnTwice'],
    ['a;;b\n1;2;3\n', 'series.columnUnnamed'],
    ['a;b\n1;"2\n3;4\n', 'series.quoteOpen'],
    ['PK\u0003\u0004 a workbook', 'series.notText'],
    [`a;b\n${'1;2\n'.repeat(MOST_ROWS + 1)}`, 'series.manyRows'],
  ])('refuse %j', (text, key) => {
    expect(problem(text)).toBe(key);
  });
});

describe('a filled design', () => {
  const design = handDesign({
    title: 'Cask {No}',
    elements: [{ ...newLineText('e1', 'stardos-stencil-700'), text: 'NO {no} {Name}' }],
    plates: [{ id: 'p', name: 'Large', diameter: { mm: 300 }, quantity: 1 }],
    approval: { name: 'Ada Pell', at: '2027-01-04', how: 'paper' as const, fingerprint: '0'.repeat(64) },
  });
  const filled = (text: string) => {
    const { columns, rows } = good(utf8(text));
    const form = fillDesign(design, columns);
    if ('problem' in form) return [form];
    return rows.map((row) => form.fill(row));
  };
  it('has its places filled, its quantity set and no approval', () => {
    const [first] = filled('no;name;Menge\n7;Ann "and"\u00a0Bo;3\n');
    if (!first || 'problem' in first) throw new Error(first?.problem);
    expect(first.design.title).toBe('Cask 7');
    expect(first.design.elements[0]).toMatchObject({ text: 'NO 7 Ann "and" Bo' });
    expect(first.design.plates[0]!.quantity).toBe(3);
    expect(first.design.approval).toBeUndefined();
    expect(first.name).toBe('7 Ann "and"\u00a0Bo');
  });
  it.each([
    ['no;other\n1;2\n', 'series.columnUnknown'],
    ['no;name\n1;\n', 'series.columnEmpty'],
    ['no;name;qty\n1;a;many\n', 'series.quantityWrong'],
    ['no;name;qty\n1;a;0\n', 'series.quantityWrong'],
    [`no;name\n1;${'m'.repeat(201)}\n`, 'document.wrongAt'],
    ['no;name\n1;a;b\n', 'series.cellsMany'],
  ])('is refused for %j', (text, key) => {
    const [first] = filled(text);
    expect(first && 'problem' in first && first.words.key).toBe(key);
  });
  it('does not read a cell as a place again', () => {
    const [first] = filled('no;name\n1;{no}\n');
    expect(first && 'design' in first && first.design.elements[0]).toMatchObject({ text: 'NO 1 {no}' });
  });
  it('needs a place', () => {
    const form = fillDesign(handDesign(), ['a']);
    expect('problem' in form && form.words.key).toBe('series.noPlaces');
  });
});
