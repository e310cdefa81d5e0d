import type { Finding } from '../findings.ts';
import { GRID_MM } from '../units.ts';
import type { CheckInput } from './input.ts';
import { inMm, said } from '../sentences/say.ts';

/** Bridges that were made narrower than the stock's rule. The maker keeps the rule, so this guards against its faults. */
export function checkBridgeTooThin({ bridges, rules }: CheckInput): Finding[] {
  return bridges
    .filter((b) => b.widthMm < rules.leastBridgeMm - GRID_MM)
    .map((b) => ({
      code: 'bridge-too-thin',
      severity: 'stop',
      place: { kind: 'ring', ring: b.outline },
      elementIds: b.elementIds,
      measuredMm: b.widthMm,
      limitMm: rules.leastBridgeMm,
      ...said('findings.bridgeThin', { width: inMm(b.widthMm), least: inMm(rules.leastBridgeMm) }),
    }));
}
