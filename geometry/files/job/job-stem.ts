import { jointFingerprint } from '../../design/joint-fingerprint.ts';
import { printInName } from '../../design/show-fingerprint.ts';
import { safePart } from '../names.ts';
import { designOfPlate, designsOn, type Job, type JobDesign } from './job.ts';
import type { LineWishes } from './job-lines.ts';

/**
 * What the names of cut files begin with: the design that is on it, order number, fingerprint, and which lines are drawn.
 * Files that differ in any of these have other names, so that none takes another's place in the machine's folder.
 */

/** Of a sheet, or of one plate on it; number: from 0. */
export function stemOfSheet(job: Job, number: number, wishes: LineWishes): string {
  const { plate } = wishes;
  const own = designOfPlate(plate, job.designs);
  const sheet = job.sheets[number]!;
  const stem = stemOf(own ? [own] : designsOn(sheet, job.designs), wishes);
  const on = `${stem}-sheet-${String(number + 1).padStart(2, '0')}`;
  return plate ? `${on}-${safePart(plate.id, 'plate')}` : on;
}

/** The same for the whole order. */
export function stemOfOrder(job: Job, wishes: LineWishes): string {
  return stemOf(job.designs, wishes);
}

/** Letters of a title and of an order number in a name: with all the rest it stays under 100. */
const TITLE_LETTERS = 36;
const REFERENCE_LETTERS = 20;

function stemOf(designs: readonly JobDesign[], wishes: LineWishes): string {
  const titles = [...new Set(designs.map((d) => d.title))];
  const references = [...new Set(designs.map((d) => d.reference))].filter((text) => text !== '');
  const prints = [...new Set(designs.map((d) => d.fingerprint))];
  const lines =
    wishes.size.kind === 'net'
      ? 'net'
      : wishes.size.joined
        ? 'path-joined'
        : wishes.size.leadIns
          ? 'path-lead-ins'
          : 'path';
  return [
    safePart((titles[0] ?? '').slice(0, TITLE_LETTERS), 'order'),
    titles.length > 1 ? `and-${titles.length - 1}` : '',
    references.length > 0 ? safePart(references.join(' ').slice(0, REFERENCE_LETTERS), '') : '',
    safePart(printInName(prints.length === 1 ? prints[0]! : jointFingerprint(prints)), 'draft'),
    lines,
    wishes.witness ? 'marks' : '',
    wishes.moves ? 'moves' : '',
    (wishes.outdated ?? []).length > 0 ? 'outdated' : '',
  ]
    .filter((part) => part !== '')
    .join('-');
}
