/** An id for an own design, of 96 random bits. Works on pages without encryption too, unlike randomUUID. */
export function newId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
