import type { Point } from '../../shapes.ts';
import type { Lead } from '../plate/lead-ins.ts';
import type { Round } from './cool-round.ts';
import type { PreparedOpening, PreparedPass } from './prepared-opening.ts';
import type { VisitOption } from './visit-plates.ts';

/** What the options of one plate are made from. */
export interface OptionsOf {
  readonly plate: { readonly id: string };
  readonly prepared: { readonly openings: readonly PreparedOpening[] };
  readonly rounds: readonly Pick<Round, 'sequence'>[];
  /** For each round the lead of each opening's outer pass. */
  readonly leads: readonly (readonly Lead[])[];
}

/** One round, begun at each of its words. Words in `last` come at its end; `place` takes points to the sheet's frame. */
export function listVisitOptions(
  p: OptionsOf,
  round: number,
  place: (point: Point) => Point,
  last: ReadonlySet<string>,
): VisitOption[] {
  const { openings } = p.prepared;
  const { sequence } = p.rounds[round]!;
  const leads = p.leads[round]!;
  const from = openings.map((o, i) => place((o.inner[0] ? chooseBestLead(o.inner[0]) : leads[i]!).pierce));
  const to = leads.map((l) => place(l.start.at));
  const places = sequence.map((_, i) => i);
  const begins = places.filter((i) => isBetweenWords(openings, sequence, i));
  return (begins.length > 0 ? begins : places).map((i) => {
    const whole = turn(sequence, i);
    const isLast = (o: number): boolean => last.has(`${p.plate.id}/${wordOf(openings[o]!)}`);
    const way = [...whole.filter((o) => !isLast(o)), ...whole.filter(isLast)];
    const gapsMm = way.slice(1).map((o, k) => {
      const [a, b] = [to[way[k]!]!, from[o]!];
      return Math.hypot(a.x - b.x, a.y - b.y);
    });
    return {
      sequence: way,
      round,
      from: from[way[0]!]!,
      to: to[way.at(-1)!]!,
      lengthMm: gapsMm.reduce((sum, mm) => sum + mm, 0),
    };
  });
}

/** No word is begun and unfinished before the opening at this place. */
function isBetweenWords(openings: readonly PreparedOpening[], sequence: readonly number[], place: number): boolean {
  const turned = turn(sequence, place).flatMap((o) => (openings[o]!.isLoose ? [] : [openings[o]!.word]));
  return turned.length === 0 || turned[0] !== turned.at(-1);
}

function turn<T>(round: readonly T[], from: number): T[] {
  return [...round.slice(from), ...round.slice(0, from)];
}

export function chooseBestLead(pass: PreparedPass): Lead {
  return pass.leads.reduce((a, b) => (b.cost < a.cost ? b : a));
}

/** What is no lettering is a word by itself. */
export function wordOf({ isLoose, id, word }: Pick<PreparedOpening, 'isLoose' | 'id' | 'word'>): string {
  return isLoose ? `:${id}` : word;
}
