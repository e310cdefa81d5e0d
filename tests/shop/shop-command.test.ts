import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { publishShop } from '../../geometry/command/publish-shop.ts';
import { readShop } from '../../geometry/shop/read-shop.ts';
import { readStock } from '../../geometry/stock/read-stock.ts';
import { markedFiles } from './inner-numbers.ts';
import { SHIPPED_SHOP } from './spoiled-files.ts';

const folder = mkdtempSync(join(tmpdir(), 'shop-command-'));
afterAll(() => rmSync(folder, { recursive: true }));

function written(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const STOCK = 'geometry/stock/starting-stock.json';

describe('the command for a shop’s own file', () => {
  it('says in one line what is wrong, and writes nothing', { timeout: 60_000 }, () => {
    const file = written('half.json', SHIPPED_SHOP.replace('"EUR"', '"euro"'));
    const out = join(folder, 'nothing');
    const args = ['--import', 'tsx', 'geometry/command/shop-command.ts', 'publish', file, '--out', out];
    const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr).toMatch(/^.*half\.json: Line \d+: .*three capital letters.*\n$/);
    expect(readdirSync(folder)).not.toContain('nothing');
  });

  it('publishes both files without what is the shop’s alone, and leaves its own untouched', async () => {
    const { shop, stock, marks } = markedFiles();
    const [file, beside] = [written('shop.json', JSON.stringify(shop)), written('stock.json', JSON.stringify(stock))];
    const out = join(folder, 'public');
    const said = await publishShop(['publish', file, '--stock', beside, '--out', out]);
    expect(said.join('\n')).toMatch(/shop\.json: sound.*\n.*without inner costs: shop\.json, stock\.json/);
    const [shopText, stockText] = ['shop.json', 'stock.json'].map((name) => readFileSync(join(out, name), 'utf8'));
    expect(marks.filter((mark) => shopText!.includes(mark) || stockText!.includes(mark))).toEqual([]);
    expect('shop' in readShop(shopText!) && 'book' in readStock(stockText!)).toBe(true);
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(shop);
    await expect(publishShop(['publish', file, '--stock', beside, '--out', folder])).rejects.toThrow(/shop’s own file/);
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(shop);
  });

  it('holds the two files against each other', async () => {
    const file = written('dollars.json', SHIPPED_SHOP.replace('"EUR"', '"USD"'));
    expect(await publishShop(['check', file])).toEqual([`${file}: sound.`]);
    await expect(publishShop(['check', file, '--stock', STOCK])).rejects.toThrow(
      /dollars\.json: Line \d+: .*counts in EUR/,
    );
  });

  it.each([
    [[], /Say check, publish or key/],
    [['check'], /Say which shop file/],
    [['check', 'a', 'b'], /One shop file at a time/],
    [['check', 'a', '--loud'], /Nobody here knows --loud/],
    [['publish', 'a'], /--out goes with publish/],
    [['check', 'a', '--out', 'b'], /--out goes with publish/],
    [['check', 'a', '--stock'], /--stock needs a name/],
    [['check', 'not-there.json'], /there is no such file/],
  ])('says how it is used: %j', async (args, sentence) => {
    await expect(publishShop(args)).rejects.toThrow(sentence);
  });
});
