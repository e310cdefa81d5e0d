import { statSync } from 'node:fs';
import { isIP } from 'node:net';
import { resolve } from 'node:path';
import { hostOf } from './own-names.mjs';

const WANTS = {
  port: ['a whole number between 1 and 65535', '--port 4300'],
  stock: ['a file that is there', '--stock our-stock.json'],
  shop: ['a file that is there', '--shop our-shop.json'],
  host: ['an address of this machine', '--host 192.168.1.20, or --host 0.0.0.0 for all'],
  name: ['a host name that the page is asked by', '--name stencils.our-shop.lan'],
};
const READ = { port: portOf, stock: fileOf, shop: fileOf, host: addressOf, name: hostOf };

/**
 * What `npm start` was told: { asked: { port, stock, shop, host, names, withInnerCosts } }, all but names and
 * withInnerCosts undefined where not said, or { problem } with a sentence.
 */
export function readAsked(args) {
  const asked = { names: [], withInnerCosts: false };
  for (let i = 0; i < args.length; i++) {
    const [flag, ...rest] = args[i].split('=');
    const name = flag.replace(/^--/, '');
    if (flag === '--with-inner-costs' && rest.length === 0) asked.withInnerCosts = true;
    else if (!flag.startsWith('--') || !Object.hasOwn(READ, name)) {
      return { problem: `Nobody here knows ${args[i]}. There are ${flags()} and --with-inner-costs.` };
    } else {
      const value = READ[name](rest.length > 0 ? rest.join('=') : (args[++i] ?? ''));
      const [what, example] = WANTS[name];
      if (value === undefined) return { problem: `--${name} wants ${what}, such as ${example}.` };
      if (name === 'name') asked.names.push(value);
      else asked[name] = value;
    }
  }
  return { asked };
}

function flags() {
  return Object.keys(READ)
    .map((name) => `--${name}`)
    .join(', ');
}

function portOf(text) {
  const port = Number(text);
  return /^\d+$/.test(text) && port > 0 && port < 65536 ? port : undefined;
}

function fileOf(text) {
  return text && statSync(text, { throwIfNoEntry: false })?.isFile() ? resolve(text) : undefined;
}

function addressOf(text) {
  if (text === 'localhost') return '127.0.0.1';
  const bare = text.replace(/^\[(.*)\]$/, '$1');
  return isIP(bare) ? bare : undefined;
}
