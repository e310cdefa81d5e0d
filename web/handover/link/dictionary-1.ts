import parts from './dictionary-1.json' with { type: 'json' };

/**
 * What designs usually hold, so that a link need not say it: a preset dictionary (RFC 1951; RFC 1950 section 2.2).
 * Links of form 1 are read with this very text: it must never change. What comes last costs least.
 */
export const DICTIONARY_1 = parts.join('');
