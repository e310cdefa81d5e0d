import { canonicalJson } from '../design/canonical-json.ts';
import { isText } from '../design/kinds.ts';
import { MOST_OPTIONS } from '../design/limits.ts';
import type { Design, DesignOption } from '../design/schema.ts';
import { APPROVAL_EN } from '../sentences/approval-en.ts';
import type { Refused } from '../sentences/wording.ts';

/** The design as it stands, among its options. No option may be called so. */
export const BASE = 'base';

const LONGEST_NAME = 60;

export interface OptionDesign {
  /** BASE for the design itself. */
  readonly id: string;
  /** Empty for the design itself: the page has a word for it. */
  readonly name: string;
  /** Whole, and without options of its own. */
  readonly design: Design;
}

/** What an option changes; what is absent is as the design has it. */
export type OptionPart = Partial<Omit<DesignOption, 'id'>>;

/** All there is to choose from, the design itself first. */
export function optionDesigns(design: Design): readonly OptionDesign[] {
  const base = { id: BASE, name: '', design: withoutOptions(design) };
  return [base, ...(design.options ?? []).map((o) => ({ id: o.id, name: o.name, design: applied(design, o) }))];
}

/**
 * The option becomes the design itself. The others stay to be chosen from, as they were, and the design as it was is
 * one of them, under formerName. An unknown id, or the design itself, changes nothing.
 */
export function chooseOption(design: Design, id: string, formerName = ''): Design {
  const [base, ...others] = optionDesigns(design);
  const chosen = others.find((o) => o.id === id);
  if (!base || !chosen) return design;
  const former = { id: freeId(design), name: formerName.slice(0, LONGEST_NAME), design: base.design };
  const left = others.map((o) => (o === chosen ? former : o));
  return { ...chosen.design, options: left.map((o) => asOption(o, chosen.design)) };
}

/** Why no further option can be added, with what to do. */
export function whyNoOption(design: Design): Refused | undefined {
  const many = (design.options ?? []).length >= MOST_OPTIONS;
  return many ? APPROVAL_EN.refused('approving.manyOptions', { most: MOST_OPTIONS }) : undefined;
}

/** One option more, last; unchanged where there are as many as there may be. */
export function addOption(design: Design, part: OptionPart): Design {
  if (whyNoOption(design)) return design;
  const added = tidied({ id: freeId(design), name: '' }, part);
  return { ...design, options: [...(design.options ?? []), added] };
}

/** Changes what is said; a part given as undefined is as the design has it again. */
export function editOption(design: Design, id: string, part: OptionPart): Design {
  if (!design.options?.some((o) => o.id === id)) return design;
  return { ...design, options: design.options.map((o) => (o.id === id ? tidied(o, part) : o)) };
}

export function dropOption(design: Design, id: string): Design {
  const options = design.options?.filter((o) => o.id !== id);
  if (options?.length === design.options?.length) return design;
  return options && options.length > 0 ? { ...design, options } : withoutOptions(design);
}

function withoutOptions(design: Design): Design {
  const { options: _, ...rest } = design;
  return rest;
}

function applied(design: Design, { stock, faces, plates }: DesignOption): Design {
  const { elements } = design;
  return {
    ...withoutOptions(design),
    ...(stock && { stock }),
    ...(plates && { plates }),
    ...(faces && {
      elements: elements.map((e) => {
        const face = Object.hasOwn(faces, e.id) ? faces[e.id] : undefined;
        return isText(e) && face !== undefined ? { ...e, face } : e;
      }),
    }),
  };
}

/** What an option has to say so that it gives its design, where another is the base. */
function asOption({ id, name, design }: OptionDesign, base: Design): DesignOption {
  const faceIn = new Map(base.elements.flatMap((e) => (isText(e) ? [[e.id, e.face] as const] : [])));
  const faces = design.elements.flatMap((e) =>
    isText(e) && faceIn.get(e.id) !== e.face ? [[e.id, e.face] as const] : [],
  );
  return {
    id,
    name,
    ...(!same(design.stock, base.stock) && { stock: design.stock }),
    ...(faces.length > 0 && { faces: Object.fromEntries(faces) }),
    ...(!same(design.plates, base.plates) && { plates: design.plates }),
  };
}

function same(a: unknown, b: unknown): boolean {
  return canonicalJson(a) === canonicalJson(b);
}

function tidied(before: DesignOption, part: OptionPart): DesignOption {
  const { id, name, stock, faces, plates } = { ...before, ...part };
  return {
    id,
    name: name.slice(0, LONGEST_NAME),
    ...(stock && { stock }),
    ...(faces && Object.keys(faces).length > 0 && { faces }),
    ...(plates && { plates }),
  };
}

function freeId({ options = [] }: Design): string {
  let n = 1;
  while (options.some((o) => o.id === `option-${n}`)) n++;
  return `option-${n}`;
}
