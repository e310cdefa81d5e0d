import labels from './labels.json' with { type: 'json' };

/** What motifs are called, English, by id: for a page that names one without drawing it. */
export const MOTIF_LABELS: Readonly<Record<string, string>> = labels;
