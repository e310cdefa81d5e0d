import advice from './es/advice.json';
import begin from './es/begin.json';
import bridges from './es/bridges.json';
import cask from './es/cask.json';
import cautions from './es/cautions.json';
import cut from './es/cut.json';
import dates from './es/dates.json';
import details from './es/details.json';
import figures from './es/figures.json';
import keep from './es/keep.json';
import link from './es/link.json';
import look from './es/look.json';
import numbers from './es/numbers.json';
import page from './es/page.json';
import placing from './es/placing.json';
import records from './es/records.json';
import cutSaid from './es/cut-said.json';
import said from './es/said.json';
import saving from './es/saving.json';
import say from './es/say.json';
import shopSaid from './es/shop-said.json';
import size from './es/size.json';
import stage from './es/stage.json';
import stockSaid from './es/stock-said.json';
import take from './es/take.json';
import trouble from './es/trouble.json';
import verdict from './es/verdict.json';
import artwork from './es/artwork.json';
import barrel from './es/barrel.json';

/** Every word in Spanish, part by part as in English; loaded only when it is spoken. */
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
