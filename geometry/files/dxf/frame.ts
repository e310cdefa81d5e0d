import type { Box } from '../../shapes.ts';
import { createTags, type TagWriter } from './tags.ts';

/**
 * The parts of an AC1015 (release 2000) file that every reader expects, whatever is drawn: DXF reference, sections
 * HEADER, TABLES, BLOCKS and OBJECTS. Release 2000 is the oldest that knows $INSUNITS, without which a file has no unit.
 */

export interface DxfLayer {
  readonly name: string;
  /** Colour index. */
  readonly colour: number;
}

/** Handles of the fixed parts; entities count on from FIRST_ENTITY_HANDLE. */
const HANDLE = {
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
  paperSpace: '21',
  modelBlock: '22',
  modelEnd: '23',
  paperBlock: '24',
  paperEnd: '25',
  rootDictionary: 'C',
  groupDictionary: 'D',
  firstLayer: 0x40,
} as const;

export const MODEL_SPACE_HANDLE = HANDLE.modelSpace;
const FIRST_ENTITY_HANDLE = 0x100;

/** A whole file: comments at the top, layers, and an entity for each item, in their order. */
export function dxfFile<T>(
  comments: readonly string[],
  layers: readonly DxfLayer[],
  extent: Box,
  items: readonly T[],
  write: (tags: TagWriter, handle: string, item: T) => void,
): string {
  const tags = createTags();
  for (const line of comments) tags.text(999, line);
  writeHeader(tags, extent, FIRST_ENTITY_HANDLE + items.length);
  writeTables(tags, layers, extent);
  writeBlocks(tags);
  section(tags, 'ENTITIES');
  items.forEach((item, i) => write(tags, (FIRST_ENTITY_HANDLE + i).toString(16).toUpperCase(), item));
  endSection(tags);
  writeObjects(tags);
  tags.text(0, 'EOF');
  return tags.toString();
}

/** Millimetres and metric said outright, and the extents. */
function writeHeader(tags: TagWriter, extent: Box, nextHandle: number): void {
  section(tags, 'HEADER');
  const variable = (name: string) => tags.text(9, name);
  variable('$ACADVER');
  tags.text(1, 'AC1015');
  variable('$DWGCODEPAGE');
  tags.text(3, 'ANSI_1252');
  variable('$INSBASE');
  tags.point3(0, 0);
  variable('$EXTMIN');
  tags.point3(extent.minX, extent.minY);
  variable('$EXTMAX');
  tags.point3(extent.maxX, extent.maxY);
  variable('$LIMMIN');
  tags.point(extent.minX, extent.minY);
  variable('$LIMMAX');
  tags.point(extent.maxX, extent.maxY);
  variable('$LUNITS');
  tags.whole(70, 2);
  variable('$LUPREC');
  tags.whole(70, 4);
  variable('$INSUNITS');
  tags.whole(70, 4);
  variable('$MEASUREMENT');
  tags.whole(70, 1);
  variable('$HANDSEED');
  tags.text(5, nextHandle.toString(16).toUpperCase());
  endSection(tags);
}

function writeTables(tags: TagWriter, layers: readonly DxfLayer[], extent: Box): void {
  section(tags, 'TABLES');
  table(tags, 'VPORT', HANDLE.vport, 1);
  viewport(tags, extent);
  endTable(tags);
  table(tags, 'LTYPE', HANDLE.ltype, 3);
  lineType(tags, HANDLE.byBlock, 'ByBlock', '');
  lineType(tags, HANDLE.byLayer, 'ByLayer', '');
  lineType(tags, HANDLE.continuous, 'Continuous', 'Solid line');
  endTable(tags);
  const all = [{ name: '0', colour: 7 }, ...layers];
  table(tags, 'LAYER', HANDLE.layer, all.length);
  all.forEach((layer, i) => {
    record(tags, 'LAYER', (HANDLE.firstLayer + i).toString(16).toUpperCase(), HANDLE.layer, 'AcDbLayerTableRecord');
    tags.text(2, layer.name);
    tags.whole(70, 0);
    tags.whole(62, layer.colour);
    tags.text(6, 'Continuous');
  });
  endTable(tags);
  table(tags, 'STYLE', HANDLE.style, 1);
  record(tags, 'STYLE', HANDLE.styleStandard, HANDLE.style, 'AcDbTextStyleTableRecord');
  tags.text(2, 'Standard');
  tags.whole(70, 0);
  tags.length(40, 0);
  tags.length(41, 1);
  tags.length(50, 0);
  tags.whole(71, 0);
  tags.length(42, 2.5);
  tags.text(3, 'txt');
  tags.text(4, '');
  endTable(tags);
  table(tags, 'VIEW', HANDLE.view, 0);
  endTable(tags);
  table(tags, 'UCS', HANDLE.ucs, 0);
  endTable(tags);
  table(tags, 'APPID', HANDLE.appid, 1);
  record(tags, 'APPID', HANDLE.acad, HANDLE.appid, 'AcDbRegAppTableRecord');
  tags.text(2, 'ACAD');
  tags.whole(70, 0);
  endTable(tags);
  table(tags, 'DIMSTYLE', HANDLE.dimstyle, 1);
  tags.text(100, 'AcDbDimStyleTable');
  tags.text(0, 'DIMSTYLE');
  // Dimension styles alone carry their handle in group 105.
  tags.text(105, HANDLE.dimStandard);
  tags.text(330, HANDLE.dimstyle);
  tags.text(100, 'AcDbSymbolTableRecord');
  tags.text(100, 'AcDbDimStyleTableRecord');
  tags.text(2, 'Standard');
  tags.whole(70, 0);
  endTable(tags);
  table(tags, 'BLOCK_RECORD', HANDLE.blockRecord, 2);
  for (const [handle, name] of SPACES) {
    record(tags, 'BLOCK_RECORD', handle, HANDLE.blockRecord, 'AcDbBlockTableRecord');
    tags.text(2, name);
  }
  endTable(tags);
  endSection(tags);
}

const SPACES = [
  [HANDLE.modelSpace, '*Model_Space', HANDLE.modelBlock, HANDLE.modelEnd],
  [HANDLE.paperSpace, '*Paper_Space', HANDLE.paperBlock, HANDLE.paperEnd],
] as const;

function writeBlocks(tags: TagWriter): void {
  section(tags, 'BLOCKS');
  for (const [owner, name, begin, end] of SPACES) {
    tags.text(0, 'BLOCK');
    entity(tags, begin, owner, '0');
    tags.text(100, 'AcDbBlockBegin');
    tags.text(2, name);
    tags.whole(70, 0);
    tags.point3(0, 0);
    tags.text(3, name);
    tags.text(1, '');
    tags.text(0, 'ENDBLK');
    entity(tags, end, owner, '0');
    tags.text(100, 'AcDbBlockEnd');
  }
  endSection(tags);
}

function writeObjects(tags: TagWriter): void {
  section(tags, 'OBJECTS');
  tags.text(0, 'DICTIONARY');
  tags.text(5, HANDLE.rootDictionary);
  tags.text(330, '0');
  tags.text(100, 'AcDbDictionary');
  tags.whole(281, 1);
  tags.text(3, 'ACAD_GROUP');
  tags.text(350, HANDLE.groupDictionary);
  tags.text(0, 'DICTIONARY');
  tags.text(5, HANDLE.groupDictionary);
  tags.text(330, HANDLE.rootDictionary);
  tags.text(100, 'AcDbDictionary');
  tags.whole(281, 1);
  endSection(tags);
}

function section(tags: TagWriter, name: string): void {
  tags.text(0, 'SECTION');
  tags.text(2, name);
}

function endSection(tags: TagWriter): void {
  tags.text(0, 'ENDSEC');
}

/** What every entity begins with after its kind. */
export function entity(tags: TagWriter, handle: string, owner: string, layer: string): void {
  tags.text(5, handle);
  tags.text(330, owner);
  tags.text(100, 'AcDbEntity');
  tags.text(8, layer);
}

function table(tags: TagWriter, name: string, handle: string, count: number): void {
  tags.text(0, 'TABLE');
  tags.text(2, name);
  tags.text(5, handle);
  tags.text(330, '0');
  tags.text(100, 'AcDbSymbolTable');
  tags.whole(70, count);
}

function endTable(tags: TagWriter): void {
  tags.text(0, 'ENDTAB');
}

function record(tags: TagWriter, kind: string, handle: string, owner: string, subclass: string): void {
  tags.text(0, kind);
  tags.text(5, handle);
  tags.text(330, owner);
  tags.text(100, 'AcDbSymbolTableRecord');
  tags.text(100, subclass);
}

function lineType(tags: TagWriter, handle: string, name: string, description: string): void {
  record(tags, 'LTYPE', handle, HANDLE.ltype, 'AcDbLinetypeTableRecord');
  tags.text(2, name);
  tags.whole(70, 0);
  tags.text(3, description);
  tags.whole(72, 65);
  tags.whole(73, 0);
  tags.length(40, 0);
}

/** Shows all of it when the file is opened. */
function viewport(tags: TagWriter, { minX, minY, maxX, maxY }: Box): void {
  record(tags, 'VPORT', HANDLE.activeView, HANDLE.vport, 'AcDbViewportTableRecord');
  tags.text(2, '*Active');
  tags.whole(70, 0);
  tags.point(0, 0);
  tags.length(11, 1);
  tags.length(21, 1);
  tags.length(12, (minX + maxX) / 2);
  tags.length(22, (minY + maxY) / 2);
  tags.length(40, Math.max(maxX - minX, maxY - minY) * 1.1);
  tags.length(41, 1.5);
  tags.length(42, 50);
}
