import type { BeginningId } from '../../state/beginning-ids.ts';
import { askLetters } from './letters.ts';
import type { Question } from './question.ts';

/** A few plain questions each, one for every word on the plate; ids name the elements of the file. */
export const QUESTIONS: Readonly<Record<BeginningId, readonly Question[]>> = {
  'makers-head': [
    { kind: 'text', id: 'maker', names: true, into: [{ element: 'maker' }], capitals: true },
    { kind: 'text', id: 'what', into: [{ element: 'what' }], capitals: true },
    { kind: 'text', id: 'caskWord', into: [{ element: 'cask' }], capitals: true },
    { kind: 'text', id: 'cask', into: [{ element: 'number', around: '• {} •' }], figures: true },
    { kind: 'text', id: 'filledWord', into: [{ element: 'filled' }], capitals: true },
    { kind: 'date', id: 'filled', into: [{ element: 'date' }], capitals: true },
  ],
  'initials-and-date': [
    { kind: 'text', id: 'initials', names: true, into: [{ element: 'initials' }], capitals: true },
    { kind: 'date', id: 'date', into: [{ element: 'date' }], capitals: true },
    askLetters(['initials'], ['date'], ['classic', 'roman', 'farm', 'sturdy']),
  ],
  'golden-wedding': [
    { kind: 'text', id: 'occasion', names: true, into: [{ element: 'golden' }], capitals: true },
    {
      kind: 'text',
      id: 'names',
      names: true,
      into: [{ element: 'names' }],
      capitals: true,
      initials: 'initials',
    },
    { kind: 'date', id: 'date', into: [{ element: 'date' }], capitals: true },
    askLetters(['initials'], ['golden', 'names', 'date'], ['classic', 'roman', 'farm', 'sturdy']),
  ],
  'name-over-motif': [
    { kind: 'text', id: 'name', names: true, into: [{ element: 'name' }], capitals: true },
    { kind: 'text', id: 'beneath', into: [{ element: 'place' }] },
    {
      kind: 'motif',
      id: 'motif',
      elements: ['motif'],
      offers: ['barrel', 'grapes', 'apple', 'hopCone', 'sheaf', 'bee', 'potStill', 'vineLeaf'],
    },
    askLetters(['name'], ['place'], ['poster', 'sturdy', 'farm', 'printed']),
  ],
  'wreath-and-name': [
    { kind: 'text', id: 'name', names: true, into: [{ element: 'name' }], capitals: true },
    { kind: 'text', id: 'above', into: [{ element: 'above' }], capitals: true },
    { kind: 'date', id: 'beneath', into: [{ element: 'since' }], capitals: true },
    askLetters(['name'], ['above', 'since'], ['printed', 'sturdy', 'farm', 'friendly']),
  ],
  jubilee: [
    { kind: 'text', id: 'who', names: true, into: [{ element: 'who' }], capitals: true },
    { kind: 'text', id: 'howMany', into: [{ element: 'number' }], figures: true },
    { kind: 'text', id: 'yearsWord', into: [{ element: 'word' }], capitals: true },
    { kind: 'text', id: 'years', into: [{ element: 'years' }] },
    askLetters(['number'], ['who', 'years', 'word'], ['deco', 'farm', 'friendly', 'crate']),
  ],
  'cask-series': [
    { kind: 'text', id: 'maker', names: true, into: [{ element: 'maker' }], capitals: true },
    { kind: 'text', id: 'what', into: [{ element: 'series' }], capitals: true },
    { kind: 'text', id: 'caskWord', into: [{ element: 'no' }], capitals: true },
    { kind: 'text', id: 'thisNumber', into: [{ element: 'number' }], figures: true },
    { kind: 'text', id: 'ofHowMany', into: [{ element: 'of' }], capitals: true },
  ],
  'drawing-and-ring': [
    { kind: 'text', id: 'top', names: true, into: [{ element: 'top' }], capitals: true },
    { kind: 'text', id: 'bottom', into: [{ element: 'bottom' }], capitals: true },
    {
      kind: 'motif',
      id: 'motif',
      elements: ['motif'],
      standsIn: true,
      offers: ['anchor', 'horseshoe', 'hammers', 'keys', 'lily', 'compass', 'knot', 'bell'],
    },
    askLetters([], ['top', 'bottom'], ['farm', 'sturdy', 'friendly', 'classic']),
  ],
};
