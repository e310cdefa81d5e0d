import { canonicalJson } from '../design/canonical-json.ts';
import { isText } from '../design/kinds.ts';
import type { Artwork, Border, DesignElement, Motif, RingText, TextElement } from '../design/schema.ts';
import { APPROVAL_EN } from '../sentences/approval-en.ts';
import type { Wording, WordValues } from '../sentences/wording.ts';
import { apart, difference, shownAmount, type Difference, type DifferenceKey } from './difference.ts';
import { elementName } from './name-element.ts';
import { ROUNDING } from '../units.ts';

type Say = (code: DifferenceKey, values?: WordValues) => void;

/** What an element is cut otherwise than before; both of one kind. faceName: what a person calls a face. */
export function elementDifferences(
  before: DesignElement,
  after: DesignElement,
  faceName: (id: string) => string,
): Difference[] {
  const found: Difference[] = [];
  const what = elementName(after);
  const group = groupOf(after);
  const say: Say = (code, values = {}) =>
    found.push(difference(group, code, { what, ...values }, { elementId: after.id }));
  if (isText(before) && isText(after)) {
    sayText(before, after, say);
    if (before.face !== after.face)
      say('differences.face', { before: faceName(before.face), after: faceName(after.face) });
  }
  if (before.kind === 'ringText' && after.kind === 'ringText') sayRing(before, after, say);
  if (before.kind === 'lineText' && after.kind === 'lineText') {
    saySize(before.capHeight, after.capHeight, say);
    sayPlace(before, after, say);
  }
  if (before.kind === 'border' && after.kind === 'border') sayBorder(before, after, say);
  if (before.kind === 'motif' && after.kind === 'motif') {
    if (before.motif !== after.motif) say('differences.became', { before: elementName(before), after: what });
    else if (canonicalJson(before.options ?? {}) !== canonicalJson(after.options ?? {})) say('differences.form');
    sayDrawn(before, after, say);
  }
  if (before.kind === 'artwork' && after.kind === 'artwork') {
    if (before.path !== after.path) say('differences.drawing');
    sayDrawn(before, after, say);
  }
  if (before.manner !== after.manner) {
    say('differences.manner', { before: mannerWords(before.manner), after: mannerWords(after.manner) });
  }
  return found;
}

export function groupOf(element: DesignElement): 'lettering' | 'drawings' {
  return isText(element) ? 'lettering' : 'drawings';
}

export function mannerWords(manner: DesignElement['manner']): Wording {
  switch (manner) {
    case undefined:
      return APPROVAL_EN.say('kinds.likeDesign');
    case 'hidden':
      return APPROVAL_EN.say('kinds.hidden');
    case 'upright':
      return APPROVAL_EN.say('kinds.upright');
    case 'band':
      return APPROVAL_EN.say('kinds.band');
  }
}

function sayText(before: TextElement, after: TextElement, say: Say): void {
  if (before.text !== after.text) {
    const values = { before: before.text, after: after.text };
    const [was, is] = [before.text.trim() !== '', after.text.trim() !== ''];
    say(was && !is ? 'differences.textEmptied' : !was && is ? 'differences.textFilled' : 'differences.text', values);
  }
  if (before.tracking !== after.tracking) {
    const percent = shownAmount(Math.abs(after.tracking - before.tracking) * 100);
    say(after.tracking > before.tracking ? 'differences.farther' : 'differences.closer', { percent });
  }
  if (canonicalJson(before.fit) !== canonicalJson(after.fit)) sayFit(before.fit, after.fit, say);
}

function sayFit(before: TextElement['fit'], after: TextElement['fit'], say: Say): void {
  if (after === 'natural') return say('differences.asFaceSets');
  const was = before === 'natural' ? undefined : before;
  if ('spanDeg' in after) {
    if (!was || !('spanDeg' in was) || was.spanDeg !== after.spanDeg) {
      say('differences.fillsArc', { after: shownAmount(after.spanDeg, 3) });
    }
  } else if (!was || !('width' in was) || was.width !== after.width) {
    say('differences.fillsWidth', { percent: shownAmount(after.width * 100, 3) });
  }
  const [bySize, wasBySize] = [after.by === 'size', was?.by === 'size'];
  if (was && bySize !== wasBySize) say(bySize ? 'differences.fillsBySize' : 'differences.fillsBySpacing');
}

function sayRing(before: RingText, after: RingText, say: Say): void {
  sayBand(before, after, say);
  if (before.middleDeg !== after.middleDeg) say('differences.angle', apart(before.middleDeg, after.middleDeg));
  if (before.reads !== after.reads) {
    say(after.reads === 'outward' ? 'differences.readsOutward' : 'differences.readsInward');
  }
}

function sayBorder(before: Border, after: Border, say: Say): void {
  if (before.style !== after.style) {
    say('differences.became', { before: elementName(before), after: elementName(after) });
  }
  if (before.count !== after.count) {
    const words = (count: Border['count']) =>
      count === 'auto' ? APPROVAL_EN.say('kinds.asManyAsSuit') : shownAmount(count);
    say('differences.pieces', { before: words(before.count), after: words(after.count) });
  }
  sayBand(before, after, say);
}

interface Band {
  readonly inner: number;
  readonly outer: number;
}

/** A band changes its height, the place of its middle, or both. */
function sayBand(before: Band, after: Band, say: Say): void {
  if (before.inner === after.inner && before.outer === after.outer) return;
  const [was, is] = [before.outer - before.inner, after.outer - after.inner];
  const out = (after.outer + after.inner - before.outer - before.inner) / 2;
  const resized = Math.abs(is - was) > ROUNDING;
  if (was <= 0 || is <= 0 || (!resized && Math.abs(out) <= ROUNDING)) {
    return say('differences.edges', {
      inner: shownAmount(after.inner * 100, 6),
      outer: shownAmount(after.outer * 100, 6),
    });
  }
  if (resized) saySize(was, is, say);
  if (Math.abs(out) > ROUNDING) {
    say(out > 0 ? 'differences.outwards' : 'differences.inwards', { percent: shownAmount(Math.abs(out) * 100) });
  }
}

function saySize(before: number, after: number, say: Say): void {
  if (before === after) return;
  const percent = shownAmount(Math.abs(after / before - 1) * 100);
  say(after > before ? 'differences.larger' : 'differences.smaller', { percent });
}

interface Placed {
  readonly x: number;
  readonly y: number;
  readonly turnDeg: number;
}

function sayPlace(before: Placed, after: Placed, say: Say): void {
  const [dx, dy] = [after.x - before.x, after.y - before.y];
  const percent = (share: number) => ({ percent: shownAmount(Math.abs(share) * 100) });
  if (dx !== 0) say(dx > 0 ? 'differences.movedRight' : 'differences.movedLeft', percent(dx));
  if (dy !== 0) say(dy > 0 ? 'differences.movedUp' : 'differences.movedDown', percent(dy));
  if (before.turnDeg !== after.turnDeg) say('differences.turned', apart(before.turnDeg, after.turnDeg));
}

function sayDrawn(before: Motif | Artwork, after: Motif | Artwork, say: Say): void {
  saySize(before.size, after.size, say);
  sayPlace(before, after, say);
  const [was, is] = [before.mirrored === true, after.mirrored === true];
  if (was !== is) say(is ? 'differences.mirrored' : 'differences.notMirrored');
  const times = ({ around }: Motif | Artwork) => (around === 'once' ? 1 : around.count);
  if (times(before) !== times(after)) say('differences.around', { before: times(before), after: times(after) });
}
