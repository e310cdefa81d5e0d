import { afterEach, describe, expect, it } from 'vitest';
import { momentDay, momentWords } from '../../web/words/say/moment-words.ts';
import { speak } from '../../web/words/t.ts';

afterEach(() => speak('en'));

describe('a moment out of a file', () => {
  it('is written as the language has it; a bare date is that day everywhere', async () => {
    // forms: Unicode CLDR, from memory
    expect(momentDay('2027-06-12')).toBe('12 June 2027');
    expect(momentWords('2027-06-12')).toBe('12 Jun 2027');
    expect(momentWords('2027-06-12T12:00:00Z')).toMatch(/^1[123] Jun 2027, \d\d:\d\d$/);
    await speak('de');
    expect(momentDay('2027-06-12')).toBe('12. Juni 2027');
    expect(momentWords('2027-06-12')).toBe('12.06.2027');
  });
  it.each(['\u202egnorw', 'a\nb', '2027-02-31', '2027-06-12T99:00', 'June 1', '1'.repeat(500), ''])(
    'that is none, %j, is quoted alike by both',
    (at) => {
      for (const say of [momentDay, momentWords]) {
        expect(say(at)).not.toMatch(/[\p{Cc}\p{Cf}]|Invalid|Mar/u);
        expect(say(at).length).toBeLessThanOrEqual(60);
        expect(say(at).slice(0, 9)).toBe(at.replace(/[\u202e\n]/g, '\u25a1').slice(0, 9));
      }
    },
  );
});
