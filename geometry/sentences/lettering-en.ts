/** What the kernel says of spelling and dates, in English: a part of the one table in plate-en.ts. */
export const LETTERING_EN = {
  lettering: {
    accentForApostrophe: 'In “{{text}}” an accent stands where an apostrophe belongs. Write an apostrophe.',
    disguisedWord: '“{{word}}” looks like a Latin word, but its letters are of another alphabet. Type it anew.',
    doubledWord: '“{{word}}”: the same word stands twice. Take one out, if that is not meant.',
    figureInWord: 'In “{{word}}” a figure stands among letters. Is the letter meant that looks like it?',
    invisible:
      '“{{text}}” holds signs that cannot be seen, as they come in with copied text. Nothing of them is cut; take them out.',
    lastYear: '“{{date}}” is past, and the order is needed by {{by}}. Check that the year is meant.',
    letterInNumber: 'In “{{word}}” a letter stands among figures. Is the figure meant that looks like it?',
    lettersAlike: 'In “{{word}}” a small l and a capital I look mixed up. Check its letters.',
    mixedAlphabets: '“{{word}}” mixes letters of different alphabets that look alike. Type it anew.',
    monthTooShort: 'There is no {{date}}: that month has {{days}} days. Check the date.',
    nameTwice: '“{{one}}” and “{{other}}” look like one name written in two ways. Check which is right.',
    neededAfter: 'The order is needed by {{by}}, after the date on it ({{date}}). Is that soon enough?',
    neededPast: 'The order is needed by {{date}}, which is past. Check the date.',
    noSuchDate: 'There is no such date as {{date}}. Check its day and month.',
    romanMalformed: '“{{numeral}}” is no roman numeral as it should be written. Check it.',
    romanOlderForm:
      '“{{numeral}}” is an older way to write {{usual}}, as on the faces of clocks. Check that it is meant.',
    spacesAtEnds: 'Blanks stand before or after “{{text}}”. Take them out, if they are not meant.',
    spacesDoubled: 'In “{{text}}” several blanks stand together. Take one out, if a wide gap is not meant.',
    straightAndCurly:
      'In “{{text}}” quotes or apostrophes are straight, elsewhere they are curly. Write all of them alike.',
    twoOrders: '{{date}} can be read with the day or the month first. Write the month in words, if in doubt.',
    wrongWeekday: '{{date}} is a day called “{{right}}”, not “{{typed}}”. Check which of the two is wrong.',
  },
} as const;
