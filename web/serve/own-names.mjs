import { BlockList, isIP } from 'node:net';
import { hostname, networkInterfaces } from 'node:os';

/** What this machine calls itself to itself. */
export const LOOPBACK_NAMES = ['localhost', '127.0.0.1', '::1'];

// Addresses that are not routed in the world: RFC 1918, 3927, 4193, 4291 and 6890, from memory. RFC 6598's are shared
// with strangers of the same provider and count as public.
const NOT_PUBLIC = new BlockList();
for (const [net, bits] of [
  ['127.0.0.0', 8],
  ['10.0.0.0', 8],
  ['172.16.0.0', 12],
  ['192.168.0.0', 16],
  ['169.254.0.0', 16],
]) {
  NOT_PUBLIC.addSubnet(net, bits, 'ipv4');
}
NOT_PUBLIC.addAddress('::1', 'ipv6');
NOT_PUBLIC.addSubnet('fe80::', 10, 'ipv6');
NOT_PUBLIC.addSubnet('fc00::', 7, 'ipv6');

/** Ends of names that no public name server answers (RFC 6761, 6762, 8375; .internal by ICANN, from memory). */
const INNER_NAME = /^[^.]+$|\.(?:localhost|local|home\.arpa|internal|lan)$/i;

const EVERY_ADDRESS = ['0.0.0.0', '::'];

/** The host of a Host header or address, small, without port and brackets; undefined when it is none. */
export function hostOf(text) {
  const found = /^(?:\[([0-9a-f:.]+)\]|([a-z0-9._-]+))(?::\d{0,5})?$/i.exec(text ?? '');
  return (found?.[1] ?? found?.[2])?.replace(/\.$/, '').toLowerCase();
}

/** True for an address or name that strangers may reach. */
export function isPublic(name) {
  const family = isIP(name);
  if (family === 0) return !INNER_NAME.test(name);
  // An IPv4 address may come dressed as IPv6.
  const plain = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(name)?.[1] ?? name;
  return !NOT_PUBLIC.check(plain, isIP(plain) === 4 ? 'ipv4' : 'ipv6');
}

/** All addresses under which a server that listens on host is reached. */
export function addressesOf(host, interfaces = networkInterfaces()) {
  if (!EVERY_ADDRESS.includes(host)) return [host];
  const all = Object.values(interfaces).flat();
  return all.filter(({ family }) => host === '::' || family === 'IPv4').map(({ address }) => address);
}

/** All names that a server on host answers to: its addresses, this machine's name when it is open to others, named ones. */
export function ownNames(host, named = []) {
  const addresses = addressesOf(host);
  const open = addresses.some((address) => !LOOPBACK_NAMES.includes(address));
  const machine = hostname().toLowerCase();
  return [...LOOPBACK_NAMES, ...addresses, ...(open ? [machine, `${machine}.local`] : []), ...named];
}
