import type { CUT_EN } from '../../geometry/sentences/cut-en.ts';
import type { PLATE_EN } from '../../geometry/sentences/plate-en.ts';
import type cut from './en/cut/cut.json';
import type proof from './en/proof/proof.json';
import type advice from './en/work/advice.json';
import type approved from './en/work/approved.json';
import type artwork from './en/work/artwork.json';
import type ask from './en/work/ask.json';
import type barrel from './en/work/barrel.json';
import type bridges from './en/work/bridges.json';
import type cask from './en/work/cask.json';
import type cautions from './en/work/cautions.json';
import type dates from './en/work/dates.json';
import type designs from './en/work/designs.json';
import type details from './en/work/details.json';
import type handOver from './en/work/handOver.json';
import type look from './en/work/look.json';
import type numbers from './en/work/numbers.json';
import type placing from './en/work/placing.json';
import type say from './en/work/say.json';
import type size from './en/work/size.json';
import type take from './en/work/take.json';
import type { first } from './en/first.ts';

/** Every part in English that comes later, by which the compiler checks what is said: a new part is two lines here. */
interface Later {
  advice: typeof advice;
  approved: typeof approved;
  artwork: typeof artwork;
  ask: typeof ask;
  barrel: typeof barrel;
  bridges: typeof bridges;
  cask: typeof cask;
  cautions: typeof cautions;
  dates: typeof dates;
  designs: typeof designs;
  details: typeof details;
  handOver: typeof handOver;
  look: typeof look;
  numbers: typeof numbers;
  placing: typeof placing;
  say: typeof say;
  size: typeof size;
  take: typeof take;
  cut: typeof cut;
  proof: typeof proof;
}

type English = typeof first & Later & typeof PLATE_EN.table & typeof CUT_EN.table;

/** A word's name without the ending that says how many: `notes_one` and `notes_other` are both `notes`. */
type Named<Name extends string> = Name extends `${infer Base}_zero`
  ? Base
  : Name extends `${infer Base}_one`
    ? Base
    : Name extends `${infer Base}_other`
      ? Base
      : Name;

type PathIn<Words, Before extends string = ''> = {
  [Name in keyof Words & string]: Words[Name] extends string
    ? `${Before}${Named<Name>}`
    : PathIn<Words[Name], `${Before}${Name}.`>;
}[keyof Words & string];

/** The path of a word: `page.top.undo`. */
export type Key = PathIn<English>;
