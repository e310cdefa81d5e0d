import type { BeginningId } from '../../state/beginning-ids.ts';
import { askLetters } from './letters.ts';
import type { Question } from './question.ts';

const RING = 40;
const LINE = 24;

/** Three or four plain questions each; ids name the elements of the file. */
export const QUESTIONS: Readonly<Record<BeginningId, readonly Question[]>> = {
  'makers-head': [
    { kind: 'text', id: 'maker', into: [{ element: 'maker' }], capitals: true, most: RING },
    { kind: 'text', id: 'what', into: [{ element: 'what' }], capitals: true, most: RING },
    { kind: 'text', id: 'cask', into: [{ element: 'number', around: '• {} •' }], most: 8, figures: true },
    { kind: 'date', id: 'filled', into: [{ element: 'date' }], capitals: true, most: LINE },
  ],
  'initials-and-date': [
    { kind: 'text', id: 'initials', into: [{ element: 'initials' }], capitals: true, most: 9 },
    { kind: 'date', id: 'date', into: [{ element: 'date' }], capitals: true, most: LINE },
    askLetters(['initials'], ['date'], ['classic', 'roman', 'farm', 'sturdy']),
  ],
  'golden-wedding': [
    { kind: 'text', id: 'occasion', into: [{ element: 'golden' }], capitals: true, most: RING },
    {
      kind: 'text',
      id: 'names',
      into: [{ element: 'names' }],
      capitals: true,
      initials: 'initials',
      most: RING,
    },
    { kind: 'date', id: 'date', into: [{ element: 'date' }], capitals: true, most: LINE },
    askLetters(['initials'], ['golden', 'names', 'date'], ['classic', 'roman', 'farm', 'sturdy']),
  ],
  'name-over-motif': [
    { kind: 'text', id: 'name', into: [{ element: 'name' }], capitals: true, most: RING },
    { kind: 'text', id: 'beneath', into: [{ element: 'place' }], most: RING },
    {
      kind: 'motif',
      id: 'motif',
      elements: ['motif'],
      offers: ['barrel', 'grapes', 'apple', 'hopCone', 'sheaf', 'bee', 'potStill', 'vineLeaf'],
    },
    askLetters(['name'], ['place'], ['poster', 'sturdy', 'farm', 'crate']),
  ],
  'wreath-and-name': [
    { kind: 'text', id: 'name', into: [{ element: 'name' }], capitals: true, most: LINE },
    { kind: 'text', id: 'above', into: [{ element: 'above' }], capitals: true, most: LINE },
    { kind: 'date', id: 'beneath', into: [{ element: 'since' }], capitals: true, most: LINE },
    askLetters(['name'], ['above', 'since'], ['printed', 'sturdy', 'farm', 'friendly']),
  ],
  jubilee: [
    { kind: 'text', id: 'who', into: [{ element: 'who' }], capitals: true, most: RING },
    { kind: 'text', id: 'howMany', into: [{ element: 'number' }], most: 5, figures: true },
    { kind: 'text', id: 'years', into: [{ element: 'years' }], most: LINE },
    askLetters(['number'], ['who', 'years', 'word'], ['deco', 'farm', 'friendly', 'crate']),
  ],
  'cask-series': [
    { kind: 'text', id: 'maker', into: [{ element: 'maker' }], capitals: true, most: RING },
    { kind: 'text', id: 'what', into: [{ element: 'series' }], capitals: true, most: RING },
    { kind: 'text', id: 'thisNumber', into: [{ element: 'number' }], most: 5, figures: true },
    { kind: 'text', id: 'ofHowMany', into: [{ element: 'of', around: 'OF {}' }], most: 5, figures: true },
  ],
  'drawing-and-ring': [
    { kind: 'text', id: 'top', into: [{ element: 'top' }], capitals: true, most: RING },
    { kind: 'text', id: 'bottom', into: [{ element: 'bottom' }], capitals: true, most: RING },
    {
      kind: 'motif',
      id: 'motif',
      elements: ['motif'],
      standsIn: true,
      offers: ['anchor', 'horseshoe', 'hammers', 'keys', 'lily', 'compass', 'knot', 'bell'],
    },
    askLetters([], ['top', 'bottom'], ['farm', 'sturdy', 'friendly', 'crate']),
  ],
};
