import { type PaperName, PAPERS } from '../files/paper/page-size.ts';
import { type Day, readIso } from '../sentences/calendar.ts';
import { LINE_SIZES } from '../files/job/line-sizes.ts';
import { Refusal } from './refusal.ts';
import { splitArguments } from './split-arguments.ts';

const USAGE =
  'npm run -s make -- DESIGN.json --out FOLDER [--stock FILE] [--today YYYY-MM-DD] [--even-so] [--approved-only | --cut-approved] [--order [--sign KEYFILE]] [--proof] [--paper a4|letter] ' +
  '[--cut net|path|leads] or, a plate a row, ' +
  'npm run -s make -- DESIGN.json --csv ROWS.csv --out FOLDER [--stock FILE] [--even-so] [--sheets] [--zip]';

/** What the command line asks for. */
export interface Asked {
  readonly file: string;
  readonly folder: string;
  /** A shop's stock file; absent: the one that ships. */
  readonly stock?: string;
  /** Rows that fill the design, a plate a row. */
  readonly csv?: string;
  /** What the order's days are held against; absent: whether they are past is not judged. */
  readonly today?: Day;
  /** Cut files also where a finding stops the cut. */
  readonly evenSo: boolean;
  /** Cut files only of what was approved as it is: drawing and order, or the drawing alone. */
  readonly approvedOnly?: 'all' | 'drawing';
  /** A spec sheet for every row too. */
  readonly sheets: boolean;
  /** All files of the rows also in one ZIP. */
  readonly zip: boolean;
  /** All files also as an order in one ZIP that can be checked. */
  readonly order: boolean;
  /** File of the key that the order is signed by. */
  readonly sign?: string;
  /** The proof for the customer too, with pages at true size. */
  readonly proof: boolean;
  /** What proof and spec sheet are set on. */
  readonly paper: PaperName;
  /** All plates on sheets of the stock too, with lines of this size. */
  readonly cut?: keyof typeof LINE_SIZES;
}

const VALUES = {
  '--out': 'a folder',
  '--stock': 'a file',
  '--csv': 'a file',
  '--today': 'a day',
  '--cut': 'net, path, leads or joined',
  '--paper': 'a4 or letter',
  '--sign': 'a key file',
};
const FLAGS = ['--even-so', '--approved-only', '--cut-approved', '--sheets', '--zip', '--order', '--proof'];

/** Throws a Refusal that says how it is used. */
export function readArguments(args: readonly string[]): Asked {
  const { file, values, flags } = splitArguments(args, { file: 'design', values: VALUES, flags: FLAGS, usage: USAGE });
  const [folder, stock, csv] = [values.get('--out'), values.get('--stock'), values.get('--csv')];
  if (file === undefined) throw new Refusal(`Say which design to make. Use: ${USAGE}`);
  if (folder === undefined) throw new Refusal(`Say where the files go. Use: ${USAGE}`);
  const [sheets, zip] = [flags.has('--sheets'), flags.has('--zip')];
  const order = flags.has('--order');
  const sign = values.get('--sign');
  if (sign !== undefined && !order) throw new Refusal(`--sign goes with --order. Use: ${USAGE}`);
  const [day, today] = [values.get('--today'), readIso(values.get('--today') ?? '')];
  if (day !== undefined && (today === undefined || csv !== undefined)) {
    throw new Refusal(`--today takes a day as 2027-06-12, and does not go with --csv. Use: ${USAGE}`);
  }
  if (csv === undefined && (sheets || zip)) throw new Refusal(`--sheets and --zip go with --csv. Use: ${USAGE}`);
  const cut = values.get('--cut');
  if (cut !== undefined && (!isLineSize(cut) || csv !== undefined)) {
    throw new Refusal(`--cut takes net, path, leads or joined, and does not go with --csv. Use: ${USAGE}`);
  }
  const proof = flags.has('--proof');
  if (csv !== undefined && (order || proof)) {
    throw new Refusal(`--order and --proof do not go with --csv. Use: ${USAGE}`);
  }
  const paper = values.get('--paper') ?? 'a4';
  if (!isPaper(paper)) throw new Refusal(`--paper takes a4 or letter. Use: ${USAGE}`);
  const [all, drawing] = [flags.has('--approved-only'), flags.has('--cut-approved')];
  if (csv !== undefined && (all || drawing)) {
    const flag = all ? '--approved-only' : '--cut-approved';
    throw new Refusal(`${flag} does not go with --csv: nobody approved the rows. Use: ${USAGE}`);
  }
  return {
    file,
    folder,
    ...(stock !== undefined && { stock }),
    ...(csv !== undefined && { csv }),
    ...(today !== undefined && { today }),
    evenSo: flags.has('--even-so'),
    ...((all || drawing) && { approvedOnly: all ? ('all' as const) : ('drawing' as const) }),
    sheets,
    zip,
    order,
    ...(sign !== undefined && { sign }),
    proof,
    paper,
    ...(cut !== undefined && { cut }),
  };
}

function isLineSize(name: string): name is keyof typeof LINE_SIZES {
  return Object.hasOwn(LINE_SIZES, name);
}

function isPaper(name: string): name is PaperName {
  return Object.hasOwn(PAPERS, name);
}
