/** Minutes and seconds, from an hour on with hours: `4:07`, `1:02:30`. */
export function clock(seconds: number): string {
  const whole = Math.round(seconds);
  const two = (n: number): string => String(n).padStart(2, '0');
  const [h, m, s] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${m}:${two(s)}`;
}
