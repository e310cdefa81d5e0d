import advice from './fr/advice.json';
import begin from './fr/begin.json';
import bridges from './fr/bridges.json';
import cask from './fr/cask.json';
import cautions from './fr/cautions.json';
import cut from './fr/cut.json';
import dates from './fr/dates.json';
import details from './fr/details.json';
import figures from './fr/figures.json';
import keep from './fr/keep.json';
import link from './fr/link.json';
import look from './fr/look.json';
import numbers from './fr/numbers.json';
import page from './fr/page.json';
import placing from './fr/placing.json';
import records from './fr/records.json';
import cutSaid from './fr/cut-said.json';
import said from './fr/said.json';
import saving from './fr/saving.json';
import say from './fr/say.json';
import shopSaid from './fr/shop-said.json';
import size from './fr/size.json';
import stage from './fr/stage.json';
import stockSaid from './fr/stock-said.json';
import take from './fr/take.json';
import trouble from './fr/trouble.json';
import verdict from './fr/verdict.json';
import artwork from './fr/artwork.json';
import barrel from './fr/barrel.json';

/** Every word in French, part by part as in English; loaded only when it is spoken. */
export const book = {
  ...said,
  ...cutSaid,
  ...shopSaid,
  ...stockSaid,
  ...records,
  advice,
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
