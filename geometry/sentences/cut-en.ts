import { makeSay } from './make-say.ts';

/** What the kernel says of a sheet: its plates' places, drift, rows, cost and files. */
export const CUT_EN = makeSay({
  cost: {
    noProcess: 'Nobody here knows the process “{{process}}”. Choose another.',
    noSpeed: 'The stock file has no speed for {{material}} by {{process}}. Add one, or choose another process.',
    tooThick:
      'The stock file has speeds for {{material}} by {{process}} up to {{most}}, not for {{thickness}}. Add one, or choose thinner sheet.',
  },
  drift: {
    doubtfulMark:
      'Mark {{mark}} does not fit the others: measure it again. If it stays so, the sheet did not only move but bend.',
    fail: 'The sheet moved: parts of the plate are off by up to {{moved}}; {{limit}} is allowed. Do not use the plate; clamp the sheet better and cut it again.',
    fewWitnesses:
      'Around plate {{plate}} there is no room for a second witness mark, so a turn of the sheet stays unseen. Leave more room between plates.',
    movedIn: 'It moved most during stage {{stage}} of {{of}}.',
    noWitness:
      'Around plate {{plate}} there is no room for a witness mark. Leave more room between plates, or check its dimensions with care.',
    pass: 'The sheet kept its place: parts of the plate are off by {{moved}} at most; {{limit}} is allowed (measured to {{uncertainty}}).',
    turnUnknown: 'One mark alone shows no turn. Measure a second one to be sure.',
    unproven:
      'The measuring is not fine enough to say: {{moved}} was found, {{limit}} is allowed, and the measuring may err by {{uncertainty}}. Measure again, finer or at more marks.',
  },
  nesting: {
    closeToEdge: '“{{plate}}” reaches {{past}} into the margin of its sheet. Move it inwards.',
    closeToHole: '“{{plate}}” is {{past}} too near a hole that the remnant had before. Move it away.',
    closeToPlate: '“{{plate}}” and “{{other}}” are {{past}} too near each other. Move one of them away.',
    cutInPlate: 'A cut of “{{plate}}” runs {{deep}} into “{{other}}”. Move them apart, then plan again.',
    cutOffSheet: 'A cut of “{{plate}}” runs {{deep}} off the sheet or into a hole. Move it inwards, then plan again.',
    countWrong: '“{{plate}}” is on the sheets {{count}} times and is wanted {{wanted}} times. Place the plates anew.',
    holesInWay:
      'A plate of {{size}} (“{{plate}}”) finds no room between the holes of the sheets there are. Add a whole sheet.',
    noSheets: 'There is no sheet to cut “{{plate}}” from. Add one to the rack.',
    nonsense: 'The size or the number of “{{plate}}” makes no sense. Give a diameter and a whole number of plates.',
    notInWaste: '“{{plate}}” does not lie wholly in the waste of “{{other}}”. Move it to the middle of the opening.',
    sheetUnknown: 'Sheet {{number}} of “{{kind}}” is not on the rack. Place the plates anew.',
    strangePlate:
      '“{{plate}}” is not in the list, has another size there, or stands on the sheets twice. Place the plates anew.',
    tooLarge:
      'A plate of {{size}} (“{{plate}}”) fits on no sheet: with margins kept, the largest plate that can be cut is {{most}}. Add a larger sheet or make the plate smaller.',
    twice: '“{{plate}}” stands in the list twice; only the first was placed. Put both numbers together.',
    usedUp: '{{count}} × “{{plate}}” found no place: the sheets are used up. Add sheets, or ask for fewer.',
  },
  series: {
    cellsMany:
      'This row has {{cells}} cells, and the first line names {{columns}} columns. Take out what is too much, or put text that holds a separator in quotes.',
    columnEmpty: 'The cell of column “{{column}}” is empty. Fill it in.',
    columnTwice: 'Two columns are called “{{column}}”. Give one of them another name.',
    columnUnknown:
      'The design asks for {{place}}, and there is no such column; there are {{columns}}. Change the text or the first line of the file.',
    columnUnnamed: 'Column {{number}} has no name in the first line. Name it, or take it out.',
    empty: 'This file has no rows. Its first line names the columns, and every line after it makes a plate.',
    headOnly: 'This file has only its first line, which names the columns. Add a line for every plate.',
    large: 'This file is larger than {{most}} MB. Split it into several.',
    manyRows: 'This file has more than {{most}} rows. Split it into several.',
    noPlaces:
      'No text of the design has a place like {name}, so every row would give the same plate. Write the name of a column in braces where its words should go.',
    notText: 'This is not a table in a text file. Save it from the spreadsheet as CSV and choose that.',
    quantityWrong: '“{{value}}” in column “{{column}}” is no quantity. Write a whole number from 1 to {{most}}.',
    quoteOpen: 'A quote that begins in line {{line}} never ends. Close it, or take it out.',
  },
  sheetFile: {
    changed:
      '“{{title}}” was changed after this plan was made: the plan has fingerprint {{planned}}, the design now {{now}}. Make the plan anew.',
    gone: 'The plan cuts “{{title}}”, which is not among the designs any more. Take it out of the plan, or open the design again.',
  },
});
