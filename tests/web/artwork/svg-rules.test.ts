import { describe, expect, test } from 'vitest';
import { readText, svg } from './node-window.ts';

/** What is painted of a square by the file's rules: CSS Cascade 4, section 6, and Selectors 4, sections 4 and 17. */
function square(style: string, inside = '<g class="a" id="q"><rect class="b" width="9" height="9"/></g>') {
  const read = readText(svg(`<style>${style}</style>${inside}<circle r="2"/>`));
  if ('refused' in read) throw new Error(read.refused);
  return { shapes: read.shapes.length, first: read.shapes[0], notes: read.notes };
}

describe('rules that hide a shape are applied', () => {
  test.each([
    ['g > rect { display: none }'],
    ['g.a > rect.b{fill:none}'],
    ['#q rect { fill: none }'],
    ['svg .a .b { visibility: hidden }'],
    ['* > g > * { display: none }'],
    ['rect { fill: none !important } .b { fill: red }'],
    ['.b { fill: red } #q .b { fill: none } rect { fill: blue }'],
    ['/* { */ path, rect { fill: none }'],
    ['@font-face { font-family: x } rect { fill: none }'],
  ])('%s', (style) => {
    const { shapes, notes } = square(style);
    expect(shapes).toBe(1);
    expect(notes).toEqual([]);
  });
});

test.each([['path > rect { display: none }'], ['g > svg > rect { fill: none }'], ['rect rect { fill: none }']])(
  'a rule for something else changes nothing: %s',
  (style) => {
    const { shapes, notes } = square(style);
    expect(shapes).toBe(2);
    expect(notes).toEqual([]);
  },
);

test.each([
  ['rect:nth-child(1) { fill: none }'],
  ['g + circle { fill: none }'],
  ['rect:not(.c) { display: none }'],
  ['[class=b] { fill: none }'],
  ['@media screen { rect { fill: none } }'],
  ['@import url(other.css);'],
  ['rect { fill: var(--ink) }'],
  ['g { rect { fill: none } }'],
])('what cannot be applied is told before the drawing is taken: %s', (style) => {
  expect(square(style).notes).toEqual(['rules']);
});

test.each([['rect:hover { fill: red }'], ['text:first-child { font-size: 9px }'], ['@page { margin: 0 }']])(
  'nothing is told of what paints nothing: %s',
  (style) => {
    expect(square(style).notes).toEqual([]);
  },
);
