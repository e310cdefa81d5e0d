import { ringsOf, union } from '../adapters/clipper.ts';
import type { BridgeEdit, Design } from '../design/schema.ts';
import type { Finding, Place } from '../findings.ts';
import type { PlacedShape } from '../layout/placed.ts';
import { placePoint, unplacePoint } from '../measure/clock.ts';
import { castRay, edgeGrid } from '../measure/edge-grid.ts';
import { flattenOutline } from '../measure/flatten.ts';
import type { Unit } from '../openings/gather-units.ts';
import type { Placement, Point } from '../shapes.ts';
import { FLATTEN_ERROR_MM, LEAST_DIVISOR_MM } from '../units.ts';
import { fromTerms, shapeBox } from './edit-terms.ts';
import { labelled, said, say, shapeWords } from '../sentences/say.ts';
import type { Wording } from '../sentences/wording.ts';

/** A bridge by hand in a unit's frame, mm. It is looked for along the line, near the line's middle. */
export interface HandKeep {
  readonly editId: string;
  readonly from: Point;
  readonly to: Point;
  readonly widthShare: number;
  /** Which of the unit's shapes it was put on. */
  readonly shape: number;
}

/** A place in a unit's frame, mm, where the tool shall put no bridge of its own. */
export interface HandDrop {
  readonly editId: string;
  readonly at: Point;
}

/** What a person changed about one unit. */
export interface HandEdits {
  readonly keeps: readonly HandKeep[];
  readonly drops: readonly HandDrop[];
}

export const NO_EDITS: HandEdits = { keeps: [], drops: [] };

interface StandingBar {
  readonly from: Point;
  readonly to: Point;
  readonly editId?: string;
}

/** The edits of a design that meet the shapes they were made for, by shape id. */
export type EditsByShape = ReadonlyMap<string, readonly BridgeEdit[]>;

/** In: design, shapes on the plate. Out: edits by the shape they were made on; where another one stands now, none. */
export function editsByShape(design: Design, shapes: readonly PlacedShape[]): EditsByShape {
  const map = new Map<string, BridgeEdit[]>();
  if (design.bridges.edits.length === 0) return map;
  const byId = new Map(shapes.map((s) => [s.id, s]));
  for (const edit of design.bridges.edits) {
    const shape = byId.get(`${edit.element}/${edit.shape}`);
    if (!shape || shape.label.slice(0, 60) !== edit.label) continue;
    map.set(shape.id, [...(map.get(shape.id) ?? []), edit]);
  }
  return map;
}

/** The edits of a unit's shapes in the unit's frame; undefined when it has none, so that its key stays as it was. */
export function editsOfUnit(unit: Unit, edits: EditsByShape): HandEdits | undefined {
  const mine = unit.shapes.filter((s) => edits.has(s.id));
  if (mine.length === 0) return undefined;
  const keeps: HandKeep[] = [];
  const drops: HandDrop[] = [];
  for (const shape of mine) {
    const box = shapeBox(shape);
    const place = (at: Point) => changeFrame(fromTerms(at, box), shape.placement, unit.frame);
    for (const edit of edits.get(shape.id) ?? []) {
      if (edit.kind === 'drop') drops.push({ editId: edit.id, at: place(edit.at) });
      else {
        const { id: editId, widthShare } = edit;
        keeps.push({
          editId,
          from: place(edit.from),
          to: place(edit.to),
          widthShare,
          shape: unit.shapes.indexOf(shape),
        });
      }
    }
  }
  return { keeps, drops };
}

/** Part of a unit's store key: the same edits of the same unit are the same work. */
export function editsKey(edits: HandEdits | undefined): string {
  return edits === undefined
    ? ''
    : `!${JSON.stringify(edits, (_, v: unknown) => (typeof v === 'number' ? round(v) : v))}`;
}

/**
 * For each bar the number of the shape it stands on: the one the person edited, else the one whose opening its middle
 * lies in, else the nearest along it.
 */
export function findShapesOfBars(
  bars: readonly StandingBar[],
  unit: Unit,
  edits: HandEdits | undefined,
): readonly number[] {
  if (unit.shapes.length === 1 || bars.length === 0) return bars.map(() => 0);
  const grids = unit.shapes.map((shape) => {
    const rings = ringsOf(union(flattenOutline(shape.outline, FLATTEN_ERROR_MM)));
    const own = rings.map((ring) => ring.map((p) => changeFrame(p, shape.placement, unit.frame)));
    return edgeGrid(
      own,
      own.map(() => 0),
    );
  });
  return bars.map(({ from, to, editId }) => {
    const keep = edits?.keeps.find((k) => k.editId === editId);
    if (keep) return keep.shape;
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
    let [best, least] = [0, Infinity];
    grids.forEach((grid, i) => {
      const ahead = castRay(grid, middle, dx, dy);
      const behind = castRay(grid, middle, -dx, -dy);
      const away = Math.min(ahead[0]?.at ?? Infinity, behind[0]?.at ?? Infinity);
      const cost = ahead.length % 2 === 1 ? 0 : away + LEAST_DIVISOR_MM;
      if (cost < least) [best, least] = [i, cost];
    });
    return best;
  });
}

/** Edits that meet no shape on this plate, as findings: the edit stays in the design, and is said to be left out. */
export function findLostEdits(design: Design, shapes: readonly PlacedShape[], edits: EditsByShape): Finding[] {
  const met = new Set([...edits.values()].flatMap((list) => list.map((e) => e.id)));
  const byId = new Map(shapes.map((s) => [s.id, s]));
  const groups = new Map<string, { ids: string[]; label: string; element: string; now: PlacedShape | undefined }>();
  for (const edit of design.bridges.edits) {
    if (met.has(edit.id)) continue;
    const key = `${edit.element}/${edit.shape} ${edit.label}`;
    const group = groups.get(key) ?? {
      ids: [],
      label: edit.label,
      element: edit.element,
      now: byId.get(`${edit.element}/${edit.shape}`),
    };
    group.ids.push(edit.id);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ ids, label, element, now }) => {
    const known = design.elements.some((e) => e.id === element);
    const why = now
      ? say('names.nowThere', { what: shapeWords(now.label) })
      : say(known ? 'names.letterGone' : 'names.removed');
    return editFinding(
      'bridge-edit-lost',
      ids,
      said('findings.bridgeEditLost', { change: whatWasChanged(ids.length), what: shapeWords(label), why }),
      now ? { kind: 'point', at: { x: now.placement.x, y: now.placement.y }, radiusMm: 5 } : { kind: 'plate' },
      known ? [element] : [],
    );
  });
}

/** What a solved unit could not do for the person, as findings. */
export function unitEditFindings(
  unit: Unit,
  edits: HandEdits | undefined,
  solved: { readonly lost: readonly string[]; readonly refused: readonly string[] },
  reachMm: number,
): Finding[] {
  if (!edits) return [];
  const what = [...new Set(unit.shapes.map((s) => s.label))].slice(0, 3).map(shapeWords);
  const elementIds = [...new Set(unit.shapes.map((s) => s.elementId))];
  const place = (p: Point): Place => ({ kind: 'point', at: placePoint(p, unit.frame), radiusMm: reachMm });
  const lost = edits.keeps.filter((k) => solved.lost.includes(k.editId));
  const refused = edits.drops.filter((d) => solved.refused.includes(d.editId));
  return [
    ...lost.map((k) =>
      editFinding(
        'bridge-edit-lost',
        [k.editId],
        said('findings.bridgeKeepLost', { what }),
        place({ x: (k.from.x + k.to.x) / 2, y: (k.from.y + k.to.y) / 2 }),
        elementIds,
      ),
    ),
    ...refused.map((d) =>
      editFinding(
        'bridge-drop-refused',
        [d.editId],
        said('findings.bridgeDropRefused', { what }),
        place(d.at),
        elementIds,
      ),
    ),
  ];
}

function whatWasChanged(count: number): Wording {
  return count === 1 ? say('names.oneChange') : say('names.manyChanges', { count });
}

function editFinding(
  code: string,
  editIds: string[],
  sentence: Pick<Finding, 'sentence' | 'words'>,
  place: Place,
  elementIds: string[],
): Finding {
  return {
    code,
    severity: 'look',
    place,
    elementIds,
    ...sentence,
    mend: { ...labelled('mends.forget'), change: { kind: 'forget-edits', editIds } },
  };
}

/** From one shape's frame to another frame on the same plate; the very same point when the two are one. */
function changeFrame(p: Point, from: Placement, to: Placement): Point {
  return from === to ? p : unplacePoint(placePoint(p, from), to);
}

function round(v: number): number {
  return Math.round(v * 1e4) / 1e4;
}
