import { makeSay } from './make-say.ts';

/**
 * What the kernel says of a shop's stock file that cannot be taken, in English. A table of its own, so that it comes
 * along only where such files are read. Parts of the file are named as they stand in it, whatever the language.
 */
export const STOCK_EN = makeSay({
  jsonFile: {
    atLine: 'Line {{line}}: {{problem}}',
    broken:
      'Line {{line}}: here this file stops being sound JSON. Look for a comma, a quote or a bracket too few or too many.',
    deep: 'Line {{line}}: this file holds groups in groups far deeper than any of ours. It was tampered with; do not use it.',
    forbidden:
      'Line {{line}}: this file holds a part named "{{name}}", which none of ours has. It was tampered with; do not use it.',
    strangeParts: 'holds {{names}}, which no such file has',
    twice: 'Line {{line}}: the part "{{name}}" stands here a second time in its group. Take one of the two out.',
  },
  stockFile: {
    advice: 'the advice',
    classForFlames:
      'In this stock file, process "{{id}}" has a class of ISO 9013, which is for thermal cutting only. Give it a class of ISO 2768.',
    empty: 'This stock file is empty. Begin with the one that ships.',
    familyMissing:
      'In this stock file, process "{{id}}" may cut "{{material}}", but its families have no part "{{family}}". Add it, with thickness and bridge.',
    gaugeUnknown:
      'In this stock file, material "{{id}}" has a gauge but no gaugeSystem: 16 gauge is another thickness in stainless, carbon and aluminium.',
    incomplete: 'This stock file is not complete. Begin with the one that ships.',
    large: 'This stock file is larger than 4 MB. Take out what is not stock.',
    material: 'material "{{id}}"',
    materialUnknown:
      'In this stock file, {{who}} speaks of the material "{{id}}", which is not in its list. Add it there, or take it out here.',
    meetingUnreasoned: 'In this stock file, a row of neverMeet has no reason. Give it "why" or "reason".',
    newer:
      'This stock file is of version {{version}}, and this Bridgehead reads up to version {{newest}}. Use a newer Bridgehead.',
    notStock: 'This is not a stock file: its part "format" should be "{{format}}".',
    process: 'process "{{id}}"',
    processUnknown:
      'In this stock file, {{who}} speaks of the process "{{id}}", which is not in its list. Add it there, or take it out here.',
    reasonsWrong:
      'In this stock file, material "{{id}}" says "{{grade}}" with {{count}} reasons. "poor" and "never" need one of "why" and "reason", "yes" needs none.',
    sheet: 'sheet "{{id}}"',
    speedsUnsorted:
      'In this stock file, process "{{id}}" has speeds whose rows do not grow in thickness. Sort them, each thickness once.',
    thicknessTurned:
      'In this stock file, process "{{id}}" cuts {{family}} from {{least}} to {{most}} mm. Change the two about.',
    twice: 'In this stock file, two {{list}} carry the same id, "{{id}}". Give one of them another.',
    wrong: 'This stock file {{complaint}}. Correct it and try again.',
    wrongAt: 'In this stock file, {{where}} {{complaint}}. Correct it and try again.',
  },
});
