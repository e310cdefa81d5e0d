import { LETTERING_EN } from './lettering-en.ts';
import { makeSay } from './make-say.ts';
import { REASONS_EN } from './reasons-en.ts';

/**
 * What the kernel says of any plate, in English: findings, labels of mends, names of things, reasons.
 * The other languages have the same keys in web/words; a test holds them against this table.
 */
export const PLATE_EN = makeSay({
  ...LETTERING_EN,
  reasons: REASONS_EN,
  findings: {
    artworkUnreadable: 'The drawing “{{name}}” can’t be read: {{problem}} Remove it and import it again.',
    bandUpsideDown: 'The outer edge of this ring must lie farther out than its inner edge. Change one of the two.',
    bendTight:
      '{{material}} of {{thickness}} breaks when it is rolled to a radius of {{radius}}; it stands {{least}}. Choose thinner sheet or another material.',
    bendUnknown: 'Nobody here has rolled {{material}} to fit a barrel. Ask its maker, or choose stainless steel.',
    beyondHalfSphere:
      'A head of {{head}} cannot bulge or sink by {{crown}}: from {{most}} on it would be more than half a ball. Lay a straight edge across the head and measure again.',
    borderCrowded:
      '{{count}} {{pieces}} would leave too little metal between them, so there are {{most}}. Ask for fewer or move the border outwards.',
    borderTight:
      'This border is too small or too near the centre for its pieces to stand apart. Move it outwards or make its band narrower.',
    bridgeDropRefused:
      'A bridge you removed from {{what}} had to stay: without it a piece would not be held. Add a bridge elsewhere on it first.',
    bridgeEditLost: '{{change}} on {{what}} was left out: {{why}}. Edit the bridges anew, or forget the change.',
    bridgeKeepLost:
      'A bridge you placed on {{what}} was left out: there is no opening to cross at that place now. Place it anew, or forget it.',
    bridgeThin:
      'A bridge is only {{width}} wide; this stock needs {{least}}. Make the letters larger or the sheet thinner.',
    bridgeThinBetween:
      'A bridge is only {{width}} wide where two openings meet; this stock needs {{least}}. Make the lettering larger or choose another face.',
    bridgeWidthRaised:
      'You asked for bridges of {{wished}}; {{thickness}} sheet {{use}} needs at least {{least}}, so they were made that wide.',
    crownGap: 'The head {{form}} by {{crown}}, so a flat plate stands off the wood by {{gap}} at {{what}}. {{advice}}',
    cutLost:
      'This opening is narrower than the kerf and is not cut at all. Make it larger, or choose a process with a narrower kerf.',
    cutNarrow:
      'A tail of this opening is narrower than the kerf and stays metal. Make it larger, or choose a process with a narrower kerf.',
    cutParted:
      'This opening is narrower than the kerf in one place: it is cut in parts, and the metal between them stays. Make it larger, or choose a process with a narrower kerf.',
    cutTight:
      'There is little room to pierce here: the edge may show a notch. Make the opening larger, or leave more room between plates.',
    emptyText: 'This text is empty and cuts nothing. Type something, or take it out.',
    headDiametersDiffer:
      'The two diameters differ by {{difference}}. Wood shrinks across its grain, but seldom so much: measure both again. The plate is made for the smaller one.',
    headNonsense:
      'A barrel head cannot measure {{across}} across. Measure inside the chime, along the boards and across them, and type both diameters.',
    headNotMeasured:
      'Heads of this barrel ({{barrel}}) measure {{range}}. Measure yours inside the chime before anything is cut.',
    heavyPlate:
      'The blank weighs {{weight}} kg. Lift it with two people or choose thinner sheet; its edges are sharp until they are deburred.',
    heldOnce:
      'A piece of {{what}} hangs on one bridge alone: there is no room for a second. Larger lettering, or thinner sheet, gives it room.',
    holdsLarger: '“{{text}}” can be cut on a plate of {{size}}. Make the plate larger.',
    holdsNowhere: '“{{text}}” holds at no length on a plate for this head. Choose a bolder face, or thinner sheet.',
    holdsShorter:
      '“{{text}}” can be cut on this plate with at most {{count}} characters. Shorten it, or choose a bolder face.',
    holdsShorterOrLarger:
      '“{{text}}” can be cut with at most {{count}} characters, or on a plate of {{size}}. Shorten it, or make the plate larger.',
    hoopsInWay:
      'Hoops stand out from the staves, and a plate on them does not lie close. On a barrel this long about {{room}} at the belly is free of them; this plate measures {{size}}. Measure between the hoops first.',
    islandOnBridge:
      'The inner piece of {{what}} is narrower than a bridge ({{least}}), so the bridge covers most of it. Larger lettering keeps its form better.',
    letterSwallowed:
      'Bridges cover {{percent}} % of {{what}}. Make the lettering larger, or choose thinner sheet or a finer process.',
    lettersSpread:
      'Letters of “{{text}}” were moved apart by up to {{spread}}, so that {{least}} of metal stays between them.',
    liftingMarks: 'Paint and flame go through {{what}} as well: cover them while you work.',
    longerThanStaves:
      'The plate of {{size}} is longer than the staves of the barrel ({{length}}). Make the plate smaller.',
    maskMissing:
      'The plate that the ring “{{plate}}” goes around is not in this order. Remove the ring, or add it anew at its plate.',
    maskNone:
      'The ring “{{plate}}” ({{size}}) is no larger than the plate it goes around ({{inner}}), so nothing is left of it. Make the ring larger.',
    maskThin:
      'The ring “{{plate}}” is only {{metal}} wide; {{least}} keeps it stiff. Make the ring larger, or the plate it goes around smaller.',
    materialPoor:
      '{{material}} cuts poorly this way ({{process}}): {{reason}}. Ask the shop first, or choose another process.',
    materialUnfit: '{{material}} must not go on this machine ({{process}}): {{reason}}.',
    tooIntricate:
      '{{what}} is too intricate to work out, so it is not cut. Repeat it less often, move copies apart, or take a simpler one.',
    metalInPieces:
      'A piece of {{what}} can’t be held: there is no room for two bridges of {{least}}. Make the lettering larger, or choose a bolder face.',
    missingGlyph: '{{face}} has no {{signs}}. Leave it out, or use a font of your own that has it.',
    missingGlyphMended: '{{face}} has no {{signs}}. The nearest it can write: {{text}}',
    noBilge: 'Nobody here knows how big round this barrel is. Lay a string round its belly and type how long it is.',
    noFingerRoom:
      'The plate leaves {{left}} around it, too little for fingers to lift it out again: they need {{need}}. Give it finger holes, or a loop of cord through an opening.',
    notOnePiece:
      'The proof finds metal here that would fall out or hang by too little. Make the lettering larger, or move things apart.',
    nothingToCut: 'Nothing is cut out of this plate yet. Type a name, initials or a date.',
    unfilledPlace:
      '{{places}} is not filled in yet, and would be cut as it stands. Type what belongs there, or make a series from a table.',
    unfilledPaper: '{{places}} is not filled in yet in title or order. Type what belongs there.',
    openingFine:
      'The finest stroke is {{width}} wide, finer than the cut itself ({{kerf}}). Make the lettering larger or choose a bolder face.',
    openingNarrow:
      'The finest stroke is {{width}} wide. It can be cut, but paint and flame hardly pass below {{least}}: a bolder face marks better.',
    outsidePlate: '“{{text}}” reaches {{over}} over the edge of the plate. Make it smaller or move it inwards.',
    overlap: '{{one}} and {{other}} run into each other. Move them apart or make one smaller.',
    overlapNear:
      '{{one}} and {{other}} leave only {{gap}} of metal between them; it takes {{least}}. Move them apart or make one smaller.',
    overspray:
      'Around the plate a ring of {{ring}} stays open, {{percent}} % of the head, where stray paint can land. Cover it with paper, or cut a ring that keeps it clean.',
    partSwallowed:
      'A part of {{what}} would vanish under a bridge. Make the lettering larger, or choose thinner sheet or a finer process.',
    plateDiameterNonsense:
      'The plate “{{plate}}” comes to {{size}}; plates can be {{least}} to {{most}}. Check the head diameters, the clearance and the size of the plate; were inches typed as millimetres?',
    plateTight: 'The plate of {{size}} leaves {{left}} on each side of a head of {{head}}; you asked for {{asked}}.',
    plateWontDrop:
      'The plate of {{size}} will not drop inside the chime: the head measures {{head}}. Make the plate smaller.',
    rimNear:
      'Only {{metal}} of metal is left between {{what}} and the rim; {{least}} keeps the rim stiff. Move it inwards.',
    rimOver: '{{what}} runs over the edge of the plate by {{over}}. Move it inwards or make it smaller.',
    ringNearlyRound:
      '“{{text}}” goes {{turn}}° of 360° round, so one cannot see where it begins. Make it smaller, or fill the whole ring.',
    ringTooLong:
      '“{{text}}” is too long for its ring: its end runs into its beginning. Make it smaller or shorter, or choose a narrower face.',
    roundTheBarrel:
      'The plate of {{size}} would reach more than half round the barrel, which is {{most}}, and could not be laid on. Make the plate smaller.',
    sideNotMeasured:
      'Some measures of the barrel’s side are guessed from a table. Measure round its belly, round its end and along its staves before anything is cut.',
    softSag:
      'An inner piece of {{what}} hangs down by {{sag}} of its own weight; more than {{limit}} lets paint creep under it. Choose thicker sheet or wider bridges, or make the letters smaller.',
    softStrain:
      'An inner piece of {{what}} strains its bridges to {{stress}} N/mm² under a touch of {{force}} N; from {{yields}} N/mm² on they stay bent. Choose thicker sheet or wider bridges, or make the letters smaller.',
    softTouch:
      'An inner piece of {{what}} gives by {{touch}} under a touch of {{force}} N; more than {{limit}} lets paint creep under it. Choose thicker sheet or wider bridges, or make the letters smaller.',
    speckLost:
      'A speck of metal inside {{what}} is too small to hold and will be cut away with the rest. Larger lettering keeps it.',
    standsProud:
      'The plate comes out {{over}} above the staves’ ends (the head lies {{recess}} deep), so the chime does not keep it in place. Weigh it down, and mind its edge.',
    staveGap:
      'A rolled plate follows the barrel round, but not along: at {{what}} it stands off the staves by {{gap}}. {{advice}}',
    tapersWrongly:
      'By these measures the barrel is thicker at its ends ({{end}} across) than at its belly ({{bilge}}). Measure both again; were they swapped?',
    textSqueezed:
      '“{{text}}” does not go into {{room}} without its letters running together, so it takes {{takes}}. Make it smaller or give it more room.',
    textSqueezedRound:
      '“{{text}}” does not go into {{room}}° without its letters running together, so it takes {{takes}}°. Make it smaller or give it more room.',
    thicknessThick:
      'Sheet of {{thickness}} is too thick for this process ({{process}}), which takes {{least}} to {{most}} of it. Choose another thickness or process.',
    thicknessThin:
      'Sheet of {{thickness}} is too thin for this process ({{process}}), which takes {{least}} to {{most}} of it. Choose another thickness or process.',
    tooDeep:
      'The head lies {{recess}} deep; below {{reach}} fingers lift badly. Give the plate finger holes, or a loop of cord through an opening.',
    torchNever: '{{material}} must never meet a torch: {{reason}}. Use paint, or choose stainless steel.',
    torchPoor: '{{material}} stands a torch only briefly: {{reason}}. Use paint, or choose stainless steel.',
    unknownBarrel:
      'Nobody here knows the barrel “{{barrel}}”. Measure the head inside the chime and type both diameters.',
    unknownFace: 'The face of “{{text}}” could not be had, so it is not drawn. Choose another face.',
    unknownMaterial: 'Nobody here knows the material “{{material}}”. Choose one of: {{known}}.',
    unknownMotif: 'There is no motif “{{motif}}” here. Choose another in its place, or remove it.',
    unknownProcess: 'Nobody here knows the process “{{process}}”. Choose one of: {{known}}.',
    webThin:
      'Only {{width}} of metal stays between two openings; this stock wants {{least}}. Move them apart, or make the lettering larger.',
  },
  mends: {
    apostrophes: 'Set the apostrophes',
    cutBy: 'Cut it by {{process}}',
    diameter: 'Make it {{size}} across',
    fingerHoles: 'Add finger holes',
    fitHead: 'Make it fit the head',
    forget: 'Forget it',
    lookalike: 'Write the one that looks like it',
    maskRing: 'Add such a ring',
    moveIn: 'Move it inwards',
    moveInBy: 'Move it inwards by {{by}}',
    onceOnly: 'Write it once',
    oneAlphabet: 'Write it in one alphabet',
    paint: 'Use it with paint',
    romanUsual: 'Write the usual form',
    sheet: 'Use {{sheet}} sheet',
    signsOut: 'Take them out',
    size: 'Set it at {{percent}} % of its size',
    smaller: 'Make it {{percent}} % smaller',
    spacesOut: 'Take the blanks out',
    swap: 'Swap them',
    useMaterial: 'Use {{material}}',
    write: 'Write “{{text}}”',
  },
  names: {
    about: 'about {{length}}',
    andOthers: '{{names}} and others',
    bead: 'bead',
    beads: 'beads',
    beadsBorder: 'the border (beads)',
    bulges: 'bulges',
    burntEdge: 'The burnt edge is soft there: hold the plate down with weights.',
    dash: 'dash',
    dashes: 'dashes',
    dashesBorder: 'the border (dashes)',
    drawing: 'drawing',
    figure: 'figure {{sign}}',
    fingerHoles: 'the finger holes',
    forPaint: 'for paint',
    fromTo: '{{from}} to {{to}}',
    gauge: '{{number}} ga',
    handSlots: 'the hand slots',
    hollow: 'is hollow',
    letter: 'letter {{sign}}',
    letterGone: 'that letter is no longer there',
    manyChanges: 'What you changed by hand ({{count}} bridges)',
    motif: 'motif',
    namedDrawing: 'the drawing “{{name}}”',
    namedMotif: 'the motif ({{motif}})',
    nowThere: '{{what}} stands there now',
    oneChange: 'A change of bridges by hand',
    paintCreeps:
      'By rule of thumb paint creeps {{bleed}} under there: hold the plate down with magnets or weights, and spray light coats straight on.',
    removed: 'what it stood on was removed',
    ring: 'ring',
    ringBorder: 'the border (ring)',
    ropeBorder: 'the border (rope)',
    sign: 'sign {{sign}}',
    something: 'something',
    strand: 'strand',
    strands: 'strands',
    text: '“{{text}}”',
    underTorch: 'under a torch',
  },
  reading: {
    archive: 'This is a packed archive. Unpack it and choose the TTF, OTF or WOFF file inside.',
    faceData: 'Its data in the design is damaged. Add the font file again.',
    faceFetch: 'The face {{name}} could not be fetched. Check the connection and try again.',
    faceGone:
      'The design uses a font file of its own that is not in it any more. Add the file again or choose another face.',
    faceNamed: '{{name}}: {{problem}}',
    faceUnknown: 'There is no face called {{name}}. Choose another face.',
    faces: 'This file holds several faces at once. Take one face out of it as TTF or OTF and choose that.',
    fontCutShort: 'The font file is cut short: part of it is missing. Copy or download it again.',
    fontDamaged: 'The font file is damaged. Get a fresh copy of it, or choose another face.',
    fontEmpty: 'The file is empty. Choose the font file again.',
    fontLarge:
      'The font file is {{size}} MB; at most {{most}} MB can be used. Choose a file with fewer languages in it.',
    fontNoLetters: 'The font has no Latin letters or figures that can be cut. Choose another face.',
    fontNoSize: 'The font file does not say how large its letters are. Choose another face.',
    notFont: 'This is not a font file. Choose a TTF, OTF or WOFF file.',
    pathCommand: 'it has “{{token}}” where a command should stand.',
    pathNowhere: 'one of its lines begins nowhere.',
    pathNumbers: 'it has too few numbers, or something that is no number.',
    webPage: 'This is a web page, not a font file. Download the font itself (TTF, OTF or WOFF) and choose that.',
    woff2: 'WOFF2 files cannot be read here. Convert the font to TTF, OTF or WOFF and choose that.',
  },
});
