import { sayCare } from '@clampwright/core/language';
import type { Certified, CertifiedRun } from '@clampwright/core/record';
import type { Comparison } from '@clampwright/core/wrench';
import { content, type Element, NEWTON_METRE, PERCENT, quantity, realList } from './element.ts';

/** The runs of a calibration with the readings that they were worked out from. */
export function resultsOf({ calibration, found, left }: Certified, language: Language): Element {
  return {
    'dcc:result': [
      ...found.map((run) => resultOf(run, calibration.asFound, 'asFound', language)),
      ...(left && calibration.asLeft ? left.map((run) => resultOf(run, calibration.asLeft!, 'asLeft', language)) : []),
    ],
  };
}

type Language = Parameters<typeof sayCare>[0];

function resultOf(
  { direction, evaluated }: CertifiedRun,
  run: Comparison,
  id: 'asFound' | 'asLeft',
  language: Language,
): Element {
  const name = sayCare(language, 'certificate.run', {
    run: sayCare(language, id === 'asFound' ? 'certificate.found' : 'certificate.left'),
    direction: sayCare(language, `certificate.${direction}`),
  });
  const { points } = evaluated;
  const said = (key: 'target' | 'mean' | 'deviation' | 'interval') => sayCare(language, `certificate.${key}`);
  return {
    '@id': `${id}-${direction}`,
    'dcc:name': content(name, language),
    'dcc:data': {
      'dcc:list': {
        'dcc:quantity': [
          quantity(
            'basic_nominalValue',
            said('target'),
            language,
            realList(
              points.map((one) => one.targetNm),
              NEWTON_METRE,
            ),
          ),
          quantity(
            'basic_referenceValue',
            said('mean'),
            language,
            realList(
              points.map((one) => one.meanReferenceNm),
              NEWTON_METRE,
            ),
          ),
          quantity(
            'basic_measurementError',
            said('deviation'),
            language,
            realList(
              points.map((one) => one.meanDeviationPercent),
              PERCENT,
              points.map((one) => one.expandedUncertaintyPercent),
            ),
          ),
          quantity(
            'torque_uncertaintyInterval',
            said('interval'),
            language,
            realList(
              points.map((one) => one.uncertaintyIntervalPercent),
              PERCENT,
            ),
          ),
          ...readings(run, direction, language),
        ],
      },
    },
  };
}

/** Every repeat, point by point; what a wrench showed only where it was read. */
function readings(
  { points }: Comparison,
  direction: CertifiedRun['direction'],
  language: Language,
): readonly Element[] {
  return points
    .filter((point) => point.direction === direction)
    .flatMap(({ targetNm, referenceNm, indicatedNm }) => [
      quantity(
        READING,
        `${sayCare(language, 'certificate.readings')} ${targetNm} N·m`,
        language,
        realList(referenceNm, NEWTON_METRE),
      ),
      ...(indicatedNm ? [quantity(SHOWN, `${targetNm} N·m`, language, realList(indicatedNm, NEWTON_METRE))] : []),
    ]);
}

/** What machines find the repeats by. */
export const READING = 'torque_referenceReading';
export const SHOWN = 'torque_indicatedReading';
