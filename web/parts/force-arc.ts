/**
 * Path of an arc round a head, clockwise from twelve o'clock: as much of the circle as a share says.
 *
 * @param share 0 to 1; more is the whole circle
 */
export function forceArc(radiusMm: number, share: number): string {
  const part = Math.min(1, Math.max(0, share));
  if (part === 0) return '';
  if (part > 0.9999) {
    return `M0 ${-radiusMm} A${radiusMm} ${radiusMm} 0 1 1 0 ${radiusMm} A${radiusMm} ${radiusMm} 0 1 1 0 ${-radiusMm}`;
  }
  const angle = 2 * Math.PI * part;
  const [x, y] = [radiusMm * Math.sin(angle), -radiusMm * Math.cos(angle)];
  return `M0 ${-radiusMm} A${radiusMm} ${radiusMm} 0 ${part > 0.5 ? 1 : 0} 1 ${x.toFixed(3)} ${y.toFixed(3)}`;
}
