import { isBand } from '../../../geometry/design/kinds.ts';
import type { DesignElement } from '../../../geometry/design/schema.ts';
import { elementWords } from '../../page/element-words.ts';
import type { Unit } from '../../words/preferences.ts';
import { formatNumber, lengthWords } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';
import { ON_CENTRE_MM } from '../../../geometry/units.ts';

/** What an element is and where it stands: `Line “2027”, 12 mm above centre`. */
function placedWords(element: DesignElement, radiusMm: number, unit: Unit): string {
  const said = t('placing.said', { what: elementWords(element), where: whereWords(element, radiusMm, unit) });
  return element.locked === true ? t('placing.lockedToo', { said }) : said;
}

function whereWords(element: DesignElement, radiusMm: number, unit: Unit): string {
  const length = (mm: number): string => lengthWords(mm, unit);
  if (isBand(element)) {
    const ends = { inner: length(element.inner * radiusMm), outer: length(element.outer * radiusMm) };
    if (element.kind === 'border') return t('placing.band', ends);
    const deg = formatNumber(((element.middleDeg % 360) + 360) % 360, 1);
    return t('placing.ring', { deg, ...ends });
  }
  const [x, y] = [element.x * radiusMm, element.y * radiusMm];
  const up =
    Math.abs(y) < ON_CENTRE_MM ? [] : [t(y > 0 ? 'placing.above' : 'placing.below', { length: length(Math.abs(y)) })];
  const side =
    Math.abs(x) < ON_CENTRE_MM ? [] : [t(x > 0 ? 'placing.right' : 'placing.left', { length: length(Math.abs(x)) })];
  const [a, b] = [...up, ...side];
  const where = a === undefined ? t('placing.centre') : b === undefined ? a : t('placing.both', { a, b });
  if (element.turnDeg === 0) return where;
  return t('placing.turned', { where, deg: formatNumber(element.turnDeg, 1) });
}

interface PlacingNow {
  readonly elements: readonly DesignElement[];
  readonly chosen: readonly DesignElement[];
  readonly several: boolean;
  readonly placing: boolean;
  /** The element that Tab came to while several are being chosen. */
  readonly walkedId: string | undefined;
}

/** What is chosen and where it stands, in a sentence; empty while nothing was chosen on the stage. */
export function sayPlacing(now: PlacingNow, radiusMm: number, unit: Unit): string {
  const { elements, chosen, several } = now;
  if (several && now.walkedId !== undefined) {
    const walked = elements.find((e) => e.id === now.walkedId);
    if (!walked) return '';
    return t(chosen.includes(walked) ? 'placing.walkIn' : 'placing.walkOut', { what: elementWords(walked) });
  }
  const [first] = chosen;
  if (!now.placing || !first) return several ? t('placing.none') : '';
  return chosen.length === 1 ? placedWords(first, radiusMm, unit) : t('placing.many', { count: chosen.length });
}
