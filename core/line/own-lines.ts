import type { LineDescription } from './description.ts';

/** The lines that the simulated wrench sends; intake/serial/README.md shows them. */
export const OWN_LINES: LineDescription = {
  name: 'Clampwright',
  delimiter: ' ',
  decimalSign: 'point',
  torqueUnit: 'N·m',
  angleUnit: 'deg',
  lines: [
    {
      says: 'sample',
      fields: [
        { means: 'mark', text: 's' },
        { means: 'number' },
        { means: 'elapsed', unit: 's' },
        { means: 'torque' },
        { means: 'angle' },
        { means: 'check', method: 'crc-16' },
      ],
    },
    {
      says: 'result',
      fields: [
        { means: 'mark', text: 'r' },
        { means: 'number' },
        { means: 'torque' },
        { means: 'angle' },
        { means: 'fastest' },
        { means: 'sample-count' },
        { means: 'time', written: 'iso-8601' },
        { means: 'identity' },
        { means: 'serial' },
        { means: 'check', method: 'crc-16' },
      ],
    },
  ],
  endOfPull: { by: 'result' },
};
