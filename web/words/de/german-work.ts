import advice from './advice.json';
import approvalSaid from './kernel/approval-said.json';
import approved from './approved.json';
import artwork from './artwork.json';
import ask from './ask.json';
import barrel from './barrel.json';
import bridges from './bridges.json';
import cask from './cask.json';
import cautions from './cautions.json';
import cutSaid from './kernel/cut-said.json';
import dates from './dates.json';
import designs from './designs.json';
import details from './details.json';
import handOver from './hand-over.json';
import look from './look.json';
import numbers from './numbers.json';
import orderSaid from './kernel/order-said.json';
import placing from './placing.json';
import records from './records.json';
import said from './kernel/said.json';
import say from './say.json';
import shopSaid from './kernel/shop-said.json';
import size from './size.json';
import stockSaid from './kernel/stock-said.json';
import take from './take.json';

/** The same in German as in english-work.ts. */
export const words = {
  ...said,
  ...cutSaid,
  ...orderSaid,
  ...approvalSaid,
  ...records,
  ...shopSaid,
  ...stockSaid,
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
