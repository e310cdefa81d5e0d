/** What a beginning asks, as plain data. Ids are also the names of the words under `ask.questions`. */
export type Question = TextQuestion | LettersQuestion | MotifQuestion;

export interface TextQuestion {
  readonly kind: 'text' | 'date';
  readonly id: string;
  /** Elements that say the answer; `around` is what stands about it on the plate, with {} in its place: `OF {}`. */
  readonly into: readonly { readonly element: string; readonly around?: string }[];
  /** The plate shows it in capitals, however it was typed, unless the person chooses otherwise. */
  readonly capitals?: boolean;
  /** The text that takes the first letters of the names given, with & between two. */
  readonly initials?: string;
  /** The design, and with it every file, is called by what is answered here. */
  readonly names?: boolean;
  /** A number: phones show figures first. */
  readonly figures?: boolean;
}

/** A flavour of lettering: which face each text has. */
export interface Letters {
  /** Name of its words under `ask.letters`. */
  readonly id: string;
  readonly faces: Readonly<Record<string, string>>;
}

export interface LettersQuestion {
  readonly kind: 'letters';
  readonly id: 'letters';
  readonly offers: readonly Letters[];
}

export interface MotifQuestion {
  readonly kind: 'motif';
  readonly id: 'motif';
  /** All take the same drawing. */
  readonly elements: readonly string[];
  readonly offers: readonly string[];
  /** It only stands in until the person brings a drawing of their own. */
  readonly standsIn?: boolean;
}
