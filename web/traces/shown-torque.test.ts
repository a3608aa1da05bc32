import { describe, expect, it } from 'vitest';
import { showTraceTorque } from './shown-torque.ts';

describe('a torque on a curve', () => {
  it('is told to a hundredth of the highest', () => {
    expect(showTraceTorque(29.437, 29.4, 'N·m', 'en')).toBe('29.4\u00a0N·m');
    expect(showTraceTorque(0.00004, 29.4, 'N·m', 'en')).toBe('0.0\u00a0N·m');
    expect(showTraceTorque(0.6481, 0.8, 'N·m', 'de')).toBe('0,648\u00a0N·m');
    expect(showTraceTorque(412.3, 410, 'N·m', 'en')).toBe('412\u00a0N·m');
  });

  it('is told in the unit of the joint', () => {
    expect(showTraceTorque(135.581_794_833_14, 136, 'lbf·ft', 'en')).toBe('100\u00a0lbf·ft');
  });
});
