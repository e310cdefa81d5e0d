import type { Box } from '../../shapes.ts';
import { HANDLE, layerHandle, SPACES } from './handles.ts';
import type { Tag } from './tags.ts';

export interface DxfLayer {
  readonly name: string;
  /** Colour index. */
  readonly colour: number;
}

/** Section TABLES of the DXF reference: the tables that release 2000 demands, most of them with one usual record. */
export function listTables(layers: readonly DxfLayer[], extent: Box): Tag[] {
  return [
    ...table('VPORT', HANDLE.vport, [viewport(extent)]),
    ...table('LTYPE', HANDLE.ltype, [
      lineType(HANDLE.byBlock, 'ByBlock', ''),
      lineType(HANDLE.byLayer, 'ByLayer', ''),
      lineType(HANDLE.continuous, 'Continuous', 'Solid line'),
    ]),
    ...table('LAYER', HANDLE.layer, [{ name: '0', colour: 7 }, ...layers].map(layerRecord)),
    ...table('STYLE', HANDLE.style, [TEXT_STYLE]),
    ...table('VIEW', HANDLE.view, []),
    ...table('UCS', HANDLE.ucs, []),
    ...table('APPID', HANDLE.appid, [APPLICATION]),
    ...table('DIMSTYLE', HANDLE.dimstyle, [DIMENSION_STYLE]),
    ...table('BLOCK_RECORD', HANDLE.blockRecord, SPACES.map(blockRecord)),
  ];
}

function table(name: string, handle: string, records: readonly (readonly Tag[])[]): Tag[] {
  const head: Tag[] = [
    [0, 'TABLE'],
    [2, name],
    [5, handle],
    [330, '0'],
    [100, 'AcDbSymbolTable'],
    [70, records.length],
  ];
  return [...head, ...records.flat(), [0, 'ENDTAB']];
}

function record(kind: string, handle: string, owner: string, subclass: string, fields: readonly Tag[]): Tag[] {
  return [[0, kind], [5, handle], [330, owner], [100, 'AcDbSymbolTableRecord'], [100, subclass], ...fields];
}

function lineType(handle: string, name: string, description: string): Tag[] {
  const fields: Tag[] = [
    [2, name],
    [70, 0],
    [3, description],
    [72, 65],
    [73, 0],
    [40, 0],
  ];
  return record('LTYPE', handle, HANDLE.ltype, 'AcDbLinetypeTableRecord', fields);
}

function layerRecord({ name, colour }: DxfLayer, index: number): Tag[] {
  const fields: Tag[] = [
    [2, name],
    [70, 0],
    [62, colour],
    [6, 'Continuous'],
  ];
  return record('LAYER', layerHandle(index), HANDLE.layer, 'AcDbLayerTableRecord', fields);
}

function blockRecord([handle, name]: (typeof SPACES)[number]): Tag[] {
  return record('BLOCK_RECORD', handle, HANDLE.blockRecord, 'AcDbBlockTableRecord', [[2, name]]);
}

const TEXT_STYLE = record('STYLE', HANDLE.styleStandard, HANDLE.style, 'AcDbTextStyleTableRecord', [
  [2, 'Standard'],
  ...([
    [70, 0],
    [40, 0],
    [41, 1],
    [50, 0],
    [71, 0],
    [42, 2.5],
  ] satisfies Tag[]),
  [3, 'txt'],
  [4, ''],
]);

const APPLICATION = record('APPID', HANDLE.acad, HANDLE.appid, 'AcDbRegAppTableRecord', [
  [2, 'ACAD'],
  [70, 0],
]);

/** Dimension styles alone carry their handle in group 105. */
const DIMENSION_STYLE: readonly Tag[] = [
  [100, 'AcDbDimStyleTable'],
  [0, 'DIMSTYLE'],
  [105, HANDLE.dimStandard],
  [330, HANDLE.dimstyle],
  [100, 'AcDbSymbolTableRecord'],
  [100, 'AcDbDimStyleTableRecord'],
  [2, 'Standard'],
  [70, 0],
];

/** Shows all of it when the file is opened. */
function viewport({ minX, minY, maxX, maxY }: Box): Tag[] {
  return record('VPORT', HANDLE.activeView, HANDLE.vport, 'AcDbViewportTableRecord', [
    [2, '*Active'],
    ...([
      [70, 0],
      [10, 0],
      [20, 0],
      [11, 1],
      [21, 1],
    ] satisfies Tag[]),
    [12, (minX + maxX) / 2],
    [22, (minY + maxY) / 2],
    [40, Math.max(maxX - minX, maxY - minY) * 1.1],
    [41, 1.5],
    [42, 50],
  ]);
}
