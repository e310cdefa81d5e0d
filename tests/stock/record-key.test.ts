import { expect, it } from 'vitest';
import { STARTING_FILE } from '../../geometry/stock/built-in-stock.ts';
import { readStock } from '../../geometry/stock/read-stock.ts';
import { recordKey } from '../../geometry/stock/record-key.ts';

const [first, second, ...others] = STARTING_FILE.materials;

it('a text that the shop has changed is said as it stands, its other texts in every language', () => {
  const read = readStock(
    JSON.stringify({ ...STARTING_FILE, materials: [{ ...first!, name: 'Blank plate' }, second, ...others] }),
  );
  if (!('book' in read)) throw new Error(read.problem);
  const [changed, same] = read.book.materials;
  expect(recordKey('materials', changed!, 'name')).toBe('');
  expect(recordKey('materials', changed!, 'sentence')).toBe(`materials.${first!.id}.sentence`);
  expect(recordKey('materials', same!, 'name')).toBe(`materials.${second!.id}.name`);
});

it('a record that does not ship has no text in another language', () => {
  const [process] = STARTING_FILE.processes;
  const read = readStock(
    JSON.stringify({ ...STARTING_FILE, processes: [...STARTING_FILE.processes, { ...process!, id: 'fine-jet' }] }),
  );
  if (!('book' in read)) throw new Error(read.problem);
  expect(recordKey('processes', read.book.processes.at(-1)!, 'caution')).toBe('');
});
