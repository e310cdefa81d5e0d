import { isText } from '../design/kinds.ts';
import { LONGEST_TEXT, MOST_QUANTITY } from '../design/limits.ts';
import { PLACE, placesOf } from '../design/places.ts';
import { problemFor } from '../design/say-where.ts';
import { designSchema, type Design } from '../design/schema.ts';
import { visible } from '../design/visible.ts';
import { CUT_EN } from '../sentences/cut-en.ts';
import type { Refused } from '../sentences/wording.ts';
import { columnKey, type Row } from './read-rows.ts';

/** Columns of these names say how many plates of the row are wanted, unless a text asks for them. */
const QUANTITY_COLUMNS = ['quantity', 'qty', 'menge', 'anzahl', 'quantité', 'cantidad'];
/** Columns that a sentence lists. */
const MOST_NAMED = 8;

/** A design whose places are filled by rows of one file. */
export interface Form {
  /** The design for one row, and what the row is called: the cells that fill it. */
  fill(row: Row): { readonly design: Design; readonly name: string } | Refused;
}

/**
 * Looks once whether design and columns go together: every {column} in a text, the title or the order has its column,
 * and there is at least one. Approval, what was accepted, options and revisions are left out of the filled ones:
 * nobody approved those.
 */
export function fillDesign(design: Design, columns: readonly string[]): Form | Refused {
  const places = placesOf(design);
  if (places.length === 0) return CUT_EN.refused('series.noPlaces');
  const at = new Map(columns.map((name, i) => [columnKey(name), i]));
  const missing = places.find((place) => !at.has(columnKey(place)));
  if (missing !== undefined) {
    const named = columns.slice(0, MOST_NAMED).map(visible).join(', ');
    return CUT_EN.refused('series.columnUnknown', { place: `{${visible(missing)}}`, columns: named });
  }
  const used = [...new Set(places.map(columnKey))];
  const quantity = QUANTITY_COLUMNS.find((name) => at.has(name) && !used.includes(name));
  return {
    fill(row) {
      if (row.fault) return row.fault;
      const cell = (name: string) => row.cells[at.get(columnKey(name)) ?? -1] ?? '';
      const empty = places.find((place) => cell(place) === '');
      if (empty !== undefined) return CUT_EN.refused('series.columnEmpty', { column: visible(empty) });
      const wanted = quantity === undefined ? '' : cell(quantity);
      if (wanted !== '' && !(/^\d{1,6}$/.test(wanted) && Number(wanted) >= 1 && Number(wanted) <= MOST_QUANTITY)) {
        const column = columns[at.get(quantity ?? '') ?? -1] ?? '';
        return CUT_EN.refused('series.quantityWrong', {
          value: visible(wanted),
          column: visible(column),
          most: MOST_QUANTITY,
        });
      }
      const filled = filledWith(design, cell, wanted === '' ? undefined : Number(wanted));
      // Fonts and drawings are as they were; texts may have become too long.
      const read = designSchema.safeParse({ ...filled, ownFaces: [] });
      const issue = read.error?.issues[0];
      if (issue) return problemFor(issue, filled);
      return { design: filled, name: used.map(cell).join(' ').slice(0, LONGEST_TEXT) };
    },
  };
}

function filledWith(design: Design, cell: (column: string) => string, quantity: number | undefined): Design {
  // A line end within a cell is a blank on a plate.
  const fill = (text: string) => text.replace(PLACE, (_, name: string) => cell(name).replace(/\s+/g, ' '));
  const { approval: _a, accepted: _c, options: _o, revisions: _r, ...rest } = design;
  const { who, reference, neededBy, notes } = design.order;
  return {
    ...rest,
    title: fill(design.title),
    order: { who: fill(who), reference: fill(reference), neededBy: fill(neededBy), notes: fill(notes) },
    elements: design.elements.map((e) => (isText(e) ? { ...e, text: fill(e.text) } : e)),
    plates: quantity === undefined ? design.plates : design.plates.map((p) => ({ ...p, quantity })),
  };
}
