/** The moment by the device's own clock, ISO 8601. */
export function momentNow(): string {
  return new Date().toISOString();
}

/** Today by the device's own clock, as a date field has it. */
export function dayNow(): string {
  const now = new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}
