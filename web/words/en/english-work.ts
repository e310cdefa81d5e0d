import { CUT_EN } from '../../../geometry/sentences/cut-en.ts';
import { PLATE_EN } from '../../../geometry/sentences/plate-en.ts';
import advice from './advice.json';
import approved from './approved.json';
import artwork from './artwork.json';
import ask from './ask.json';
import barrel from './barrel.json';
import bridges from './bridges.json';
import cask from './cask.json';
import cautions from './cautions.json';
import dates from './dates.json';
import designs from './designs.json';
import details from './details.json';
import handOver from './hand-over.json';
import look from './look.json';
import numbers from './numbers.json';
import placing from './placing.json';
import say from './say.json';
import size from './size.json';
import take from './take.json';

/** What the panels, the stage and the dialogs say, and what the kernel says of a plate, in English, part by part. */
export const words = {
  // They stand in the kernel, once.
  ...PLATE_EN.table,
  ...CUT_EN.table,
  advice,
  approved,
  artwork,
  ask,
  barrel,
  bridges,
  cask,
  cautions,
  dates,
  designs,
  details,
  handOver,
  look,
  numbers,
  placing,
  say,
  size,
  take,
};
