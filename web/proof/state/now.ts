import { spoken } from '../../words/t.ts';

/** The moment by the device's own clock, ISO 8601. */
export function momentNow(): string {
  return new Date().toISOString();
}

/** Today by the device's own clock, as a date field has it. */
export function dayNow(): string {
  const now = new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}

/** A moment that a design carries, as it is read where the device stands; older ones are bare dates. */
export function momentWords(at: string): string {
  const bare = /^\d{4}-\d{2}-\d{2}$/.test(at);
  const time = Date.parse(at);
  // whoever wrote the file wrote what stands there
  if (Number.isNaN(time)) return at;
  return new Intl.DateTimeFormat(spoken() === 'en' ? 'en-GB' : spoken(), {
    dateStyle: 'medium',
    ...(bare ? { timeZone: 'UTC' } : { timeStyle: 'short' }),
  }).format(time);
}
