import type { Box } from '../../shapes.ts';
import { entityHandle, HANDLE, SPACES } from './handles.ts';
import { type DxfLayer, listTables } from './tables.ts';
import { createTags, type Tag, type TagWriter } from './tags.ts';

/**
 * The parts of an AC1015 (release 2000) file that every reader expects, whatever is drawn: DXF reference, sections
 * HEADER, TABLES, BLOCKS and OBJECTS. Release 2000 is the oldest that knows $INSUNITS, without which a file has no unit.
 *
 * Writes a whole file: comments at the top, layers, and an entity for each item, in their order.
 */
export function writeDxfFile<T>(
  comments: readonly string[],
  layers: readonly DxfLayer[],
  extent: Box,
  items: readonly T[],
  write: (tags: TagWriter, handle: string, item: T) => void,
): string {
  const tags = createTags();
  for (const line of comments) tags.text(999, line);
  const section = (name: string, fill: () => void): void => {
    tags.add([
      [0, 'SECTION'],
      [2, name],
    ]);
    fill();
    tags.text(0, 'ENDSEC');
  };
  section('HEADER', () => tags.add(listHeader(extent, entityHandle(items.length))));
  section('TABLES', () => tags.add(listTables(layers, extent)));
  section('BLOCKS', () => tags.add(SPACES.flatMap(listBlock)));
  section('ENTITIES', () => items.forEach((item, i) => write(tags, entityHandle(i), item)));
  section('OBJECTS', () => tags.add(OBJECTS));
  tags.text(0, 'EOF');
  return tags.toString();
}

/** Millimetres and metric said outright, and the extents. */
function listHeader({ minX, minY, maxX, maxY }: Box, nextHandle: string): Tag[] {
  const variables: readonly (readonly [name: string, ...values: Tag[]])[] = [
    ['$ACADVER', [1, 'AC1015']],
    ['$DWGCODEPAGE', [3, 'ANSI_1252']],
    ['$INSBASE', [10, 0], [20, 0], [30, 0]],
    ['$EXTMIN', [10, minX], [20, minY], [30, 0]],
    ['$EXTMAX', [10, maxX], [20, maxY], [30, 0]],
    ['$LIMMIN', [10, minX], [20, minY]],
    ['$LIMMAX', [10, maxX], [20, maxY]],
    ['$LUNITS', [70, 2]],
    ['$LUPREC', [70, 4]],
    ['$INSUNITS', [70, 4]],
    ['$MEASUREMENT', [70, 1]],
    ['$HANDSEED', [5, nextHandle]],
  ];
  return variables.flatMap(([name, ...values]): Tag[] => [[9, name], ...values]);
}

function listBlock([owner, name, begin, end]: (typeof SPACES)[number]): Tag[] {
  return [
    [0, 'BLOCK'],
    ...entityHead(begin, owner, '0'),
    ...([
      [100, 'AcDbBlockBegin'],
      [2, name],
      [70, 0],
      [10, 0],
      [20, 0],
      [30, 0],
      [3, name],
      [1, ''],
    ] satisfies Tag[]),
    [0, 'ENDBLK'],
    ...entityHead(end, owner, '0'),
    [100, 'AcDbBlockEnd'],
  ];
}

const OBJECTS: readonly Tag[] = [
  ...dictionary(HANDLE.rootDictionary, '0'),
  [3, 'ACAD_GROUP'],
  [350, HANDLE.groupDictionary],
  ...dictionary(HANDLE.groupDictionary, HANDLE.rootDictionary),
];

function dictionary(handle: string, owner: string): Tag[] {
  return [
    [0, 'DICTIONARY'],
    [5, handle],
    [330, owner],
    [100, 'AcDbDictionary'],
    [281, 1],
  ];
}

/** What every entity begins with after its kind. */
export function entityHead(handle: string, owner: string, layer: string): Tag[] {
  return [
    [5, handle],
    [330, owner],
    [100, 'AcDbEntity'],
    [8, layer],
  ];
}
