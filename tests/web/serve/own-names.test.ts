import { rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { STARTING_SHOP_FILE } from '../../../geometry/shop/built-in-shop.ts';
import { publicShop } from '../../../geometry/shop/public-shop.ts';
import { STARTING_FILE } from '../../../geometry/stock/built-in-stock.ts';
import { innerCostsIn } from '../../../web/serve/inner-costs.mjs';
import { addressesOf, hostOf, isPublic, ownNames } from '../../../web/serve/own-names.mjs';
import { createStaticServer, listenOnFreePort } from '../../../web/serve/static-server.mjs';
import { markedFiles } from '../../shop/inner-numbers.ts';
import { oddFolder, send } from './odd-requests.ts';

describe('names and addresses', () => {
  it('tells what strangers may reach', () => {
    // Blocks of the IANA registries for special addresses (RFC 6890) and names (RFC 6761, 8375), from memory.
    const inner = ['127.0.0.1', '10.1.2.3', '172.31.0.1', '192.168.0.7', '169.254.9.9', '::1', 'fe80::1', 'fd12::1'];
    const innerNames = ['::ffff:192.168.0.1', 'localhost', 'cutter', 'page.cutter.local', 'a.home.arpa', 'b.internal'];
    const open = ['8.8.8.8', '172.32.0.1', '192.169.0.1', '100.64.0.1', '2001:db8::1', '::ffff:8.8.8.8'];
    const openNames = ['stencils.example', 'local.example.org', 'localhost.example'];
    expect([...inner, ...innerNames].filter(isPublic)).toEqual([]);
    expect([...open, ...openNames].filter((name) => !isPublic(name))).toEqual([]);
  });

  it('reads a host out of the head', () => {
    expect(['LocalHost:80', '[::1]:4173', '[::1]', 'a.b.', '127.0.0.1:'].map(hostOf)).toEqual([
      'localhost',
      '::1',
      '::1',
      'a.b',
      '127.0.0.1',
    ]);
    expect([undefined, '', 'a b', 'me@a', 'a/b', 'a:b', '[::1', 'a:99999999'].map(hostOf)).toEqual(
      Array(8).fill(undefined),
    );
  });

  it('knows under which addresses it is reached', () => {
    const card = { netmask: '', mac: '', internal: false, cidr: null };
    const cards = {
      lan: [
        { ...card, address: '192.168.0.7', family: 'IPv4' as const },
        { ...card, address: '2001:db8::7', family: 'IPv6' as const, scopeid: 0 },
      ],
    };
    expect(addressesOf('0.0.0.0', cards)).toEqual(['192.168.0.7']);
    expect(addressesOf('::', cards)).toEqual(['192.168.0.7', '2001:db8::7']);
    expect(addressesOf('10.0.0.1', cards)).toEqual(['10.0.0.1']);
    expect(ownNames('127.0.0.1')).toEqual(['localhost', '127.0.0.1', '::1', '127.0.0.1']);
    expect(ownNames('192.168.0.7', ['cutter.lan'])).toEqual(expect.arrayContaining(['192.168.0.7', 'cutter.lan']));
  });
});

describe('inner costs', () => {
  it('are seen in each file that holds one, and in none that was published', () => {
    const { shop, stock } = markedFiles();
    const bare = publicShop(shop, stock);
    expect(innerCostsIn('/shop.json', JSON.stringify(bare.shop))).toBe(false);
    expect(innerCostsIn('/stock.json', JSON.stringify(bare.stock))).toBe(false);
    const { work } = STARTING_FILE;
    const published = publicShop(STARTING_SHOP_FILE, STARTING_FILE);
    const [material, process, sheet] = [
      STARTING_FILE.materials[0],
      STARTING_FILE.processes[0],
      STARTING_FILE.sheets[0],
    ];
    const full: readonly ['/stock.json' | '/shop.json', unknown][] = [
      ['/stock.json', { ...published.stock, work }],
      ['/stock.json', { ...published.stock, materials: [material] }],
      ['/stock.json', { ...published.stock, processes: [process] }],
      ['/stock.json', { ...published.stock, sheets: [{ ...sheet, prices: [] }] }],
      ['/shop.json', { ...published.shop, private: 'a note' }],
      ['/shop.json', { ...published.shop, prices: STARTING_SHOP_FILE.prices }],
      ['/shop.json', { ...published.shop, stock: { ...published.stock, work } }],
      ['/stock.json', stock],
      ['/shop.json', shop],
    ];
    expect(full.filter(([path, file]) => !innerCostsIn(path, JSON.stringify(file)))).toEqual([]);
    expect(innerCostsIn('/stock.json', 'no stock at all')).toBe(true);
  });

  it('are not served to strangers, also when they come after the start', async () => {
    const folder = oddFolder();
    const server = createStaticServer(folder, {}, { names: ['stencils.example'], guardCosts: true });
    const port = await listenOnFreePort(server, 4850, false);
    const ask = (path: string) => send(port, `GET ${path} HTTP/1.0\r\nHost: stencils.example\r\n\r\n`);
    expect((await ask('/stock.json')).status).toBe(200);
    writeFileSync(join(folder, 'stock.json'), JSON.stringify(markedFiles().stock));
    for (const path of ['/stock.json', '/%73tock.json', '/stock.json?a']) {
      const { status, came } = await ask(path);
      expect(status).toBe(403);
      expect(came).toContain('npm run -s shop -- publish');
      expect(came).not.toContain('ratePerHour');
    }
    expect((await ask('/')).status).toBe(200);
    server.close();
    rmSync(dirname(folder), { recursive: true });
  });
});
