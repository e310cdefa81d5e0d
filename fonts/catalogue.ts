/**
 * The faces that come with the tool: what each is, what it suits, under which licence and from where.
 * The files stay in their packages, unmodified, as their licences ask (several reserve the name of the face).
 * What characters a face has is measured (coverage.ts), never typed here.
 */

export type FaceKind = 'stencil' | 'serif' | 'slab' | 'display' | 'sans' | 'script' | 'blackletter';

export interface FaceEntry {
  readonly id: string;
  /** As a person calls it. */
  readonly name: string;
  readonly packageName: string;
  /** Path of the font file inside the package. */
  readonly file: string;
  readonly weight: number;
  /** SPDX name. */
  readonly licence: string;
  /** Path of the licence text inside the package. */
  readonly licenceFile: string;
  /** Where the drawing comes from. */
  readonly source: string;
  readonly kind: FaceKind;
  /** One plain sentence for the person who chooses. */
  readonly suits: string;
  /** The letters are meant to run into each other. */
  readonly joins: boolean;
  /** What to mind when cutting it. */
  readonly note?: string;
}

export const FACES: readonly FaceEntry[] = [
  // Stencil faces: drawn with bridges of their own.
  entry(
    'stardos-stencil',
    'Stardos Stencil',
    400,
    'stencil',
    'The lettering of old shipping crates and cask heads; good for almost anything.',
    {
      note: 'The bridges of M, X and V are thin; small letters get wider ones.',
    },
  ),
  entry(
    'stardos-stencil',
    'Stardos Stencil Bold',
    700,
    'stencil',
    'The classic crate and barrel lettering, in a weight that paints well; start here.',
    {
      note: 'The bridge of V is thin; small letters get wider ones.',
    },
  ),
  entry(
    'saira-stencil-one',
    'Saira Stencil One',
    400,
    'stencil',
    'A heavy modern distillery or brewery mark with very even bridges.',
  ),
  entry(
    'big-shoulders-stencil',
    'Big Shoulders Stencil',
    400,
    'stencil',
    'Long names in a narrow ring: tall, slim and plain.',
    {
      note: 'Q, 4 and A have thin bridges; small letters get wider ones.',
    },
  ),
  entry(
    'big-shoulders-stencil',
    'Big Shoulders Stencil Bold',
    700,
    'stencil',
    'Warehouse and crate lettering where there is little width.',
    {
      note: 'Q, 4 and A have thin bridges; small letters get wider ones.',
    },
  ),
  entry(
    'big-shoulders-stencil',
    'Big Shoulders Stencil Black',
    900,
    'stencil',
    'A loud, narrow brewery mark that is read from across the yard.',
    {
      note: 'Q, 4 and A have thin bridges; small letters get wider ones.',
    },
  ),
  entry(
    'big-shoulders-stencil-display',
    'Big Shoulders Stencil Display',
    700,
    'stencil',
    'Large cask numbers and short words, slim and sharp.',
    {
      note: 'An older cut; Q has a thin bridge.',
    },
  ),
  entry(
    'big-shoulders-stencil-text',
    'Big Shoulders Stencil Text',
    700,
    'stencil',
    'Small lettering in narrow rings: the wider bridges of its family.',
    {
      note: 'An older cut; Q has a thin bridge.',
    },
  ),
  entry('black-ops-one', 'Black Ops One', 400, 'stencil', 'A rugged, military look for crates and strong stout.'),
  entry(
    'allerta-stencil',
    'Allerta Stencil',
    400,
    'stencil',
    'Plain words that must be read at a glance: lot numbers, contents, warnings.',
    {
      note: 'It has no # sign.',
    },
  ),
  entry(
    'stick-no-bills',
    'Stick No Bills',
    400,
    'stencil',
    'A light street-poster look for cider and beer, with wide bridges.',
  ),
  entry(
    'stick-no-bills',
    'Stick No Bills Bold',
    700,
    'stencil',
    'A friendly street-poster look with wide bridges: taprooms and markets.',
  ),
  entry('sirin-stencil', 'Sirin Stencil', 400, 'stencil', 'A light, flared elegance for wineries and weddings.', {
    note: 'Its bridges are thin; keep the letters large.',
  }),
  entry('keania-one', 'Keania One', 400, 'stencil', 'Square, engineered lettering for numbers and workshop crates.'),
  entry('emblema-one', 'Emblema One', 400, 'stencil', 'A leaning, festive look for weddings and gift barrels.'),
  entry('plaster', 'Plaster', 400, 'stencil', 'Art-deco blocks for two or three initials; very wide.', {
    note: 'The bridge of X is nearly nothing; it gets a wider one.',
  }),
  entry('wallpoet', 'Wallpoet', 400, 'stencil', 'Wide technical lettering for a few characters.'),

  // Serif faces.
  entry('playfair-display', 'Playfair Display Bold', 700, 'serif', 'A fine winery or wedding look, thick and thin.', {
    note: 'Its hairlines are thin and its figures hang below the line; keep the letters large.',
  }),
  entry(
    'libre-caslon-text',
    'Libre Caslon Bold',
    700,
    'serif',
    'A traditional cellar: port, sherry, old family names.',
  ),
  entry(
    'old-standard-tt',
    'Old Standard Bold',
    700,
    'serif',
    'A printed label of a hundred years ago: wine and cognac.',
  ),
  entry('cinzel', 'Cinzel Bold', 700, 'serif', 'Roman capitals cut in stone: wineries, monasteries, anniversaries.', {
    note: 'Small letters are small capitals.',
  }),
  entry('marcellus', 'Marcellus', 400, 'serif', 'Quiet flared capitals for a winery or a wedding.'),
  entry(
    'im-fell-english-sc',
    'IM Fell English Small Capitals',
    400,
    'serif',
    'Rough old printing: rum, gin and apothecary names.',
    {
      note: 'Its edges are rough on purpose, so a cut file is longer.',
    },
  ),

  // Slab faces.
  entry('alfa-slab-one', 'Alfa Slab One', 400, 'slab', 'A heavy distillery mark: whisky, bourbon, rye.'),
  entry('zilla-slab', 'Zilla Slab Bold', 700, 'slab', 'Sturdy and open: farm ciders and co-operatives.'),
  entry('bree-serif', 'Bree Serif', 400, 'slab', 'A friendly, rounded look for small breweries and cider makers.'),
  entry('graduate', 'Graduate', 400, 'slab', 'Club and college lettering: teams, years, initials.', {
    note: 'Small letters are small capitals.',
  }),

  // Display faces.
  entry('abril-fatface', 'Abril Fatface', 400, 'display', 'Fat poster lettering for vermouth, gin and gift barrels.', {
    note: 'Very thin hairlines; keep the letters large.',
  }),
  entry(
    'cinzel-decorative',
    'Cinzel Decorative Bold',
    700,
    'display',
    'Roman capitals with swashes: wedding initials and anniversaries.',
    {
      note: 'Swashes reach above and below the band.',
    },
  ),
  entry('limelight', 'Limelight', 400, 'display', 'Art-deco cinema lettering for bars and cocktails.'),
  entry('uncial-antiqua', 'Uncial Antiqua', 400, 'display', 'An Irish manuscript look: whiskey and mead.'),
  entry('berkshire-swash', 'Berkshire Swash', 400, 'display', 'Sweet and swashed: weddings, jams, dessert wines.', {
    note: 'Swashes reach below the line.',
  }),

  // Sans faces.
  entry('bebas-neue', 'Bebas Neue', 400, 'sans', 'Clear narrow capitals for modern breweries and cask numbers.', {
    note: 'It has capitals only.',
  }),
  entry('league-gothic', 'League Gothic', 400, 'sans', 'Very narrow poster capitals: much text in a small ring.'),
  entry('oswald', 'Oswald Bold', 700, 'sans', 'A strong narrow all-rounder for names, numbers and dates.'),

  // Script and blackletter.
  entry(
    'great-vibes',
    'Great Vibes',
    400,
    'script',
    'Formal handwriting for wedding names; set it large and straight.',
    {
      joins: true,
      note: 'Its strokes are thin and its letters join; only large plates take it.',
    },
  ),
  entry(
    'unifrakturcook',
    'UnifrakturCook',
    700,
    'blackletter',
    'Black letter for German wine, monastery beer and old houses.',
    {
      note: 'Many loose pieces: it needs many bridges.',
    },
  ),
];

export function faceEntry(faceId: string): FaceEntry | undefined {
  return FACES.find((face) => face.id === faceId);
}

function entry(
  family: string,
  name: string,
  weight: number,
  kind: FaceKind,
  suits: string,
  more: { readonly joins?: boolean; readonly note?: string } = {},
): FaceEntry {
  return {
    id: `${family}-${weight}`,
    name,
    packageName: `@fontsource/${family}`,
    file: `files/${family}-latin-${weight}-normal.woff`,
    weight,
    licence: 'OFL-1.1',
    licenceFile: 'LICENSE',
    source: `@fontsource/${family} (Fontsource), from the Google Fonts family of that name`,
    kind,
    suits,
    joins: more.joins ?? false,
    ...(more.note === undefined ? {} : { note: more.note }),
  };
}
