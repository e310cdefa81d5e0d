import rows from './faces.json' with { type: 'json' };

/**
 * The faces that come with the tool: what each is, what it suits, under which licence and from where.
 * The files stay in their packages, unmodified, as their licences ask (several reserve the name of the face).
 * What characters a face has is measured (coverage.ts), never typed here.
 */

export const FACE_KINDS = ['stencil', 'serif', 'slab', 'display', 'sans', 'script', 'blackletter'] as const;
export type FaceKind = (typeof FACE_KINDS)[number];

export interface FaceEntry {
  readonly id: string;
  /** As a person calls it. */
  readonly name: string;
  readonly packageName: string;
  /** Path of the font file inside the package. */
  readonly file: string;
  /** Path of the file with Latin letters beyond Latin-1; absent for a face that was never drawn with them. */
  readonly furtherFile?: string;
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

/** What faces.json says of each; the order is the one in which they are offered: stencil faces first. */
interface FaceRow extends Pick<FaceEntry, 'name' | 'weight' | 'suits' | 'note'> {
  readonly family: string;
  readonly kind: string;
  readonly joins?: boolean;
  /** No file of further Latin letters comes with it. */
  readonly westernOnly?: boolean;
}

export const FACES: readonly FaceEntry[] = (rows as readonly FaceRow[]).map(
  ({ family, kind, joins = false, westernOnly = false, ...row }) => ({
    ...row,
    id: `${family}-${row.weight}`,
    packageName: `@fontsource/${family}`,
    file: `files/${family}-latin-${row.weight}-normal.woff`,
    ...(!westernOnly && { furtherFile: `files/${family}-latin-ext-${row.weight}-normal.woff` }),
    licence: 'OFL-1.1',
    licenceFile: 'LICENSE',
    source: `@fontsource/${family} (Fontsource), from the Google Fonts family of that name`,
    kind: kind as FaceKind,
    joins,
  }),
);

export function faceEntry(faceId: string): FaceEntry | undefined {
  return FACES.find((face) => face.id === faceId);
}
