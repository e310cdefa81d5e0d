import { describe, expect, it } from 'vitest';
import { applyMend } from '../../../web/state/actions/apply-mend.ts';
import { codesOf, designOf, findingsOf, mended } from './read.ts';

describe('a name typed in two ways', () => {
  it.each([
    ['MARROW LANE', 'Marow Lane'],
    ['O’Brien', 'OBrien'],
    ['José', 'JOSE'],
    ['Müller', 'Mueller'],
    ['Stephenson', 'Stephanson'],
    ['THISTLEDOWN', 'THISTELDOWN'],
    ['Tillotts', 'Tilotts'],
  ])('is seen in %j and %j', (one, other) => {
    expect(codesOf(one, other)).toEqual(['look name-typed-differently']);
    expect(codesOf(`${one} & ${other}`)).toEqual(['look name-typed-differently']);
  });
  it.each([
    ['Marrow', 'MARROW'],
    ['Cooper', 'Coopers'],
    ['Coopers', 'Cooper’s'],
    ['CASK 12', 'CASK 13'],
    ['HERMANOS', 'HERMANAS'],
    ['Hansen', 'Jansen'],
    ['Johanna', 'Johannes'],
    ['Marta', 'Martha'],
    ['Keller', 'Kellner'],
    ['Mutter', 'Mütter'],
    ['We’ll', 'Well'],
    ['through', 'thorough'],
  ])('is not seen in %j and %j', (one, other) => {
    expect(codesOf(one, other)).toEqual([]);
  });
  it('is said with both texts and never mended by itself', () => {
    const [finding] = findingsOf(designOf('Marrow', 'Perry', 'Marow'));
    expect(finding?.elementIds).toEqual(['t2', 't0']);
    expect(finding?.mend).toBeUndefined();
  });
});

describe('a word twice running', () => {
  it('is seen over line ends and in other cases, in one text only', () => {
    expect(codesOf('AGED IN the\nThe OLD OAK')).toEqual(['look doubled-word']);
    expect(codesOf('Aged in the', 'the old oak')).toEqual([]);
    expect(mended('Aged in in old oak')).toBe('Aged in old oak');
  });
  it.each(['HO HO HO', 'Walla Walla', 'A A', 'XX XX', 'Baden-Baden', 'CASK 7 7', 'hoch hoch'])(
    'is let be in %j',
    (text) => {
      expect(codesOf(text)).toEqual([]);
    },
  );
});

describe('letters of two alphabets', () => {
  it('are seen in one word, and written in one', () => {
    expect(codesOf('M\u0410RROW')).toEqual(['look mixed-alphabets']);
    expect(mended('OLD M\u0410RROW LANE')).toBe('OLD MARROW LANE');
    expect(mended('МОСКBА')).toBe('МОСКВА');
  });
  it('are seen in a whole word among Latin ones', () => {
    expect(codesOf('OLD \u041e\u0410\u041a')).toEqual(['look disguised-word']);
    expect(mended('OLD \u041e\u0410\u041a')).toBe('OLD OAK');
  });
  it.each(['МОСКВА', 'ΑΘΗΝΑ', 'Α & Ω', 'Æther', 'Kraków', '5 µm', 'OLD МИР'])('are let be in %j', (text) => {
    expect(codesOf(text)).toEqual([]);
  });
});

describe('figures and letters that look alike', () => {
  it.each([
    ['H0USE', 'figure-in-word', 'HOUSE'],
    ['WH1SKY', 'figure-in-word', undefined],
    ['2O27', 'letter-in-number', '2027'],
    ['l927', 'letter-in-number', '1927'],
    ['O6.12.2027', 'letter-in-number', '06.12.2027'],
    ['MlLL', 'figure-in-word', 'MILL'],
    ['MiIl', 'figure-in-word', 'Mill'],
  ])('%s', (text, code, written) => {
    expect(codesOf(text)).toEqual([`look ${code}`]);
    expect(mended(text)).toBe(written);
  });
  it.each([
    'B0URB0N',
    'H2O',
    '20l',
    '225L',
    'B2B',
    'CASK1A',
    'McIntosh',
    'DeIanno',
    'FreundInnen',
    '2o',
    'No1',
    'I95',
    '1st',
    'MK10',
  ])('are let be in %j', (text) => {
    expect(codesOf(text)).toEqual([]);
  });
});

describe('quotes', () => {
  it('are seen when some are straight and some are curly', () => {
    expect(codesOf('O’Brien', "Cooper's")).toEqual(['look straight-and-curly']);
    expect(mended('O’Brien', "Cooper's Arms")).toBe('Cooper’s Arms');
    expect(mended('“Oak”', '"Elm"')).toBeUndefined();
    expect(mended('O´Brien')).toBe("O'Brien");
  });
  it('are let be when all are alike, and feet and inches always', () => {
    expect(codesOf("Cooper's", "Miller's")).toEqual([]);
    expect(codesOf('O’Brien', '6\' 2"')).toEqual([]);
  });
});

describe('blanks and what cannot be seen', () => {
  it('are notes that one click takes out', () => {
    for (const text of [' MARROW', 'MARROW ', 'MARROW  LANE']) expect(codesOf(text)).toEqual(['note stray-spaces']);
    expect(mended(' MARROW   LANE ')).toBe('MARROW LANE');
    for (const sign of ['\u200b', '\u00ad', '\ufeff', '\u200e']) {
      expect(codesOf(`MAR${sign}ROW`)).toEqual(['note invisible-signs']);
      expect(mended(`MAR${sign}ROW`)).toBe('MARROW');
    }
    expect(mended('LANE\u00a0PERRY')).toBeUndefined();
    expect(mended('Lane\u00a0Perry')).toBe('Lane Perry');
  });
  it('are let be where they are right', () => {
    expect(codesOf('Vive la mariée\u00a0!', '«\u00a0Odile\u00a0»', 'N°\u00a04')).toEqual([]);
    const design = designOf('MARROW • ');
    const [line] = design.elements;
    const ring = { kind: 'ringText', inner: 0.7, outer: 0.9, middleDeg: 0, reads: 'outward' } as const;
    const { id, text, face } = line as { id: string; text: string; face: string };
    const closed = { ...ring, id, text, face, tracking: 0, fit: { spanDeg: 360 } };
    expect(findingsOf({ ...design, elements: [closed] })).toEqual([]);
  });
});

describe('what is found', () => {
  it('is said once for a design, with its first plate that is lettered', () => {
    const design = designOf('the the');
    const [plate] = design.plates;
    const plates = [
      { ...plate!, id: 'ring', masks: 'a' },
      { ...plate!, id: 'a' },
      { ...plate!, id: 'b' },
    ];
    expect(plates.map((p) => findingsOf({ ...design, plates }, p).length)).toEqual([0, 1, 0]);
  });
  it('is gone once it is mended', () => {
    for (const text of ['Aged in in oak', ' MARROW', '2O27', 'MAR\u00adROW', 'M\u0410RROW', 'CASK IIII']) {
      const design = designOf(text);
      expect(findingsOf(applyMend(design, findingsOf(design)[0]!.mend!.change).design)).toEqual([]);
    }
  });
});
