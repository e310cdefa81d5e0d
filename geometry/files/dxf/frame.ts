import type { Box } from '../../shapes.ts';
import frame from './frame.json' with { type: 'json' };
import { createTags, type Tag, type TagWriter } from './tags.ts';

export interface DxfLayer {
  readonly name: string;
  /** Colour index. */
  readonly colour: number;
}

/**
 * The parts of an AC1015 (release 2000) file that every reader expects, whatever is drawn: DXF reference, sections
 * HEADER, TABLES, BLOCKS and OBJECTS. Release 2000 is the oldest that knows $INSUNITS, without which a file has no unit.
 * They stand in frame.json as pairs of group code and value; `{name}` is filled in. Dimension styles alone carry
 * their handle in group 105. The viewport shows all of the drawing when the file is opened.
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
  const { minX, minY, maxX, maxY } = extent;
  const span = Math.max(maxX - minX, maxY - minY) * 1.1;
  const middle = { '{midX}': (minX + maxX) / 2, '{midY}': (minY + maxY) / 2, '{span}': span };
  const box = { '{minX}': minX, '{minY}': minY, '{maxX}': maxX, '{maxY}': maxY };
  const values = { ...box, ...middle, '{nextHandle}': entityHandle(items.length) };
  const tags = createTags();
  for (const line of comments) tags.text(999, line);
  const section = (name: string, fill: () => void): void => {
    tags.text(0, 'SECTION');
    tags.text(2, name);
    fill();
    tags.text(0, 'ENDSEC');
  };
  section('HEADER', () => tags.add(fillTags(frame.header, values)));
  section('TABLES', () => {
    for (const { name, handle, records } of frame.tables) {
      const all = name === 'LAYER' ? layerRecords(records[0]!, layers) : records.map((one) => fillTags(one, values));
      tags.add(fillTags(frame.table, { '{name}': name, '{handle}': handle, '{count}': all.length }));
      tags.add(all.flat());
      tags.text(0, 'ENDTAB');
    }
  });
  section('BLOCKS', () => tags.add(fillTags(frame.blocks)));
  section('ENTITIES', () => items.forEach((item, i) => write(tags, entityHandle(i), item)));
  section('OBJECTS', () => tags.add(fillTags(frame.objects)));
  tags.text(0, 'EOF');
  return tags.toString();
}

/** Layer 0, which every file has, and the given ones. */
function layerRecords(record: Rows[number][], layers: readonly DxfLayer[]): Tag[][] {
  return [{ name: '0', colour: 7 }, ...layers].map(({ name, colour }, i) =>
    fillTags(record, { '{handle}': toHex(FIRST_LAYER_HANDLE + i), '{name}': name, '{colour}': colour }),
  );
}

type Rows = readonly (string | number)[][];

function fillTags(rows: Rows, values: Readonly<Record<string, string | number>> = {}): Tag[] {
  return rows.map(([code, value]) => [Number(code), values[value!] ?? value!]);
}

/** What every entity begins with after its kind. */
export function entityHead(handle: string, layer: string): Tag[] {
  return fillTags(frame.entity, { '{handle}': handle, '{layer}': layer });
}

/** Handles count on, in upper-case hexadecimal, from those that frame.json holds. */
const FIRST_LAYER_HANDLE = 0x40;
const FIRST_ENTITY_HANDLE = 0x100;

function entityHandle(index: number): string {
  return toHex(FIRST_ENTITY_HANDLE + index);
}

function toHex(value: number): string {
  return value.toString(16).toUpperCase();
}
