/** Handles of the parts that every file holds, upper-case hexadecimal; entities count on from FIRST_ENTITY_HANDLE. */
export const HANDLE = {
  vport: '1',
  ltype: '2',
  layer: '3',
  style: '4',
  view: '5',
  ucs: '6',
  appid: '7',
  dimstyle: '8',
  blockRecord: '9',
  byBlock: '10',
  byLayer: '11',
  continuous: '12',
  styleStandard: '13',
  acad: '14',
  dimStandard: '15',
  activeView: '16',
  modelSpace: '20',
  rootDictionary: 'C',
  groupDictionary: 'D',
} as const;

const FIRST_LAYER_HANDLE = 0x40;
const FIRST_ENTITY_HANDLE = 0x100;

/** Handle of a space, its name, and the handles of its block's beginning and end. */
export const SPACES = [
  [HANDLE.modelSpace, '*Model_Space', '22', '23'],
  ['21', '*Paper_Space', '24', '25'],
] as const;

export function layerHandle(index: number): string {
  return toHex(FIRST_LAYER_HANDLE + index);
}

export function entityHandle(index: number): string {
  return toHex(FIRST_ENTITY_HANDLE + index);
}

function toHex(value: number): string {
  return value.toString(16).toUpperCase();
}
