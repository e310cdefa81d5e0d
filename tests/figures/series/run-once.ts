import { makeSeries } from '../../../geometry/command/make-series.ts';
import { designOf, rowsOf } from '../../../geometry/command/read-files.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';

// `node --import tsx run-once.ts DESIGN.json ROWS.csv FOLDER`: the series of the headless command with a ZIP, in a
// process of its own. The last line it prints is what it took, as JSON.

const [file = '', csv = '', folder = ''] = process.argv.slice(2);
const [design, rows] = [await designOf(file), await rowsOf(csv)];
const began = performance.now();
const asked = {
  file,
  folder,
  csv,
  evenSo: false,
  sheets: false,
  zip: true,
  order: false,
  proof: false,
  paper: 'a4' as const,
};
const status = await makeSeries(asked, design, rows, BUILT_IN, new AbortController().signal);
const seconds = (performance.now() - began) / 1000;
console.log(JSON.stringify({ status, seconds, peakMb: process.resourceUsage().maxRSS / 1024 }));
