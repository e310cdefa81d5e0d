import advice from './en/advice.json';
import artwork from './en/artwork.json';
import barrel from './en/barrel.json';
import { SAID_EN } from '../../geometry/words/said-en.ts';
import begin from './en/begin.json';
import bridges from './en/bridges.json';
import cask from './en/cask.json';
import cautions from './en/cautions.json';
import cut from './en/cut.json';
import dates from './en/dates.json';
import details from './en/details.json';
import figures from './en/figures.json';
import keep from './en/keep.json';
import link from './en/link.json';
import look from './en/look.json';
import numbers from './en/numbers.json';
import page from './en/page.json';
import placing from './en/placing.json';
import saving from './en/saving.json';
import say from './en/say.json';
import size from './en/size.json';
import stage from './en/stage.json';
import take from './en/take.json';
import trouble from './en/trouble.json';
import verdict from './en/verdict.json';

/** Every word of the interface in English, part by part: what all other languages are held against. */
export const english = {
  advice,
  // What the kernel says of a plate; it stands there, once.
  ...SAID_EN,
  begin,
  artwork,
  barrel,
  bridges,
  cask,
  cautions,
  cut,
  dates,
  details,
  figures,
  keep,
  link,
  look,
  numbers,
  page,
  placing,
  saving,
  say,
  size,
  stage,
  take,
  trouble,
  verdict,
};
