import advice from './de/advice.json';
import begin from './de/begin.json';
import bridges from './de/bridges.json';
import cask from './de/cask.json';
import cautions from './de/cautions.json';
import cut from './de/cut.json';
import dates from './de/dates.json';
import details from './de/details.json';
import figures from './de/figures.json';
import keep from './de/keep.json';
import link from './de/link.json';
import look from './de/look.json';
import numbers from './de/numbers.json';
import page from './de/page.json';
import placing from './de/placing.json';
import records from './de/records.json';
import cutSaid from './de/cut-said.json';
import said from './de/said.json';
import saving from './de/saving.json';
import say from './de/say.json';
import shopSaid from './de/shop-said.json';
import size from './de/size.json';
import stage from './de/stage.json';
import stockSaid from './de/stock-said.json';
import take from './de/take.json';
import trouble from './de/trouble.json';
import verdict from './de/verdict.json';
import artwork from './de/artwork.json';
import barrel from './de/barrel.json';

/** Every word in German, part by part as in English; loaded only when it is spoken. */
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
