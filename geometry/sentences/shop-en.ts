import { makeSay } from './make-say.ts';

/**
 * What the kernel says of a shop's own file that cannot be taken, and of a price that it does not give, in English. A
 * table of its own, so that it comes along only where they are asked for.
 */
export const SHOP_EN = makeSay({
  shopFile: {
    cheaperLarger:
      'In this shop file, {{where}}: a larger plate costs less than a smaller one ({{less}} after {{more}}). Correct the prices.',
    currencies:
      'In this shop file, the prices are in {{currency}}, and its stock counts in {{other}}. Bring both to one currency.',
    empty: 'This shop file is empty. Begin with the one that ships.',
    incomplete: 'This shop file is not complete. Begin with the one that ships.',
    large: 'This shop file is larger than 5 MB. Take out what is not the shop’s, or make the logo smaller.',
    leadTurned: 'In this shop file, leadTime goes from {{least}} to {{most}} days. Change the two about.',
    logoBroken: 'In this shop file, the picture of the logo is no sound PNG or JPEG. Save it anew and put that in.',
    logoLarge:
      'In this shop file, the picture of the logo is {{width}} by {{height}} dots; at most {{most}} each way. Make it smaller.',
    logoSeeThrough:
      'In this shop file, the picture of the logo has see-through parts, or its rows are interlaced. Save it as a plain PNG on white, or put in a drawing.',
    logoPath:
      'In this shop file, {{where}}: the path is not sound. It begins with M and has only M, L, Q, C and Z, each with all its numbers.',
    materialUnknown:
      'In this shop file, {{where}} speaks of the material "{{id}}", which the stock file does not have. Add it there, or take it out here.',
    newer:
      'This shop file is of version {{version}}, and this Bridgehead reads up to version {{newest}}. Use a newer Bridgehead.',
    notShop: 'This is not a shop file: its part "format" should be "{{format}}".',
    processUnknown:
      'In this shop file, {{where}} speaks of the process "{{id}}", which the stock file does not have. Add it there, or take it out here.',
    rowHidden:
      'In this shop file, {{where}} never counts: a row before it takes all of its plates. Put the special rows first, or take it out.',
    sizesUnsorted: 'In this shop file, {{where}}: the diameters do not grow. Sort them, each once.',
    stepsUnsorted:
      'In this shop file, {{where}}: quantity steps must grow, in plates and in per cent. Sort them, each once.',
    thicknessTurned: 'In this shop file, {{where}} goes from {{least}} to {{most}} mm. Change the two about.',
    wrong: 'This shop file {{complaint}}. Correct it and try again.',
    wrongAt: 'In this shop file, {{where}} {{complaint}}. Correct it and try again.',
  },
  shopForm: {
    colour: 'should be a colour such as #1A2B3C',
    currency: 'should be three capital letters such as EUR (ISO 4217)',
    d: 'should be a path of M, L, Q, C and Z with plain numbers',
    data: 'should be a PNG or JPEG inside the file (data:image/png;base64,...), never an address',
    email: 'should be an e-mail address',
    phone: 'should be a telephone number',
    web: 'should be an address that begins with https://',
  },
  quote: {
    cuttingUnlisted:
      'For cutting {{material}} of {{thickness}} by {{process}} there is no list price: the price is on request. Ask {{shop}}.',
    maskUnlisted:
      'For rings that mask, such as “{{plate}}”, there is no list price: the price is on request. Ask {{shop}}.',
    nothing: 'No plate is wanted yet, so there is no price. Say how many.',
    plateLarge:
      'The list prices for {{material}} of {{thickness}} by {{process}} go up to a diameter of {{most}}; “{{plate}}” has {{diameter}}. Its price is on request: ask {{shop}}.',
    plateUnlisted:
      'For plates of {{material}}, {{thickness}}, by {{process}} there is no list price: the price is on request. Ask {{shop}}.',
    pricesUnlisted: '{{shop}} has no list prices here: the price is on request. Ask {{shop}}.',
    rollingUnlisted: 'For rolling “{{plate}}” there is no list price: the price is on request. Ask {{shop}}.',
    tooMuch: 'The amount is larger than a list price is meant for: the price is on request. Ask {{shop}}.',
  },
});
