import { invalid, ok, type Result } from '../../failure/failure.ts';
import { readPropertyClass } from '../../fastener/property-class.ts';
import type { Thread } from '../../fastener/thread.ts';

/** Strength of a bolt by its class or by figures; figures go before the class. */
interface GivenStrength {
  readonly propertyClass?: string | undefined;
  readonly yieldStrengthMPa?: number | undefined;
  readonly tensileStrengthMPa?: number | undefined;
}

export interface BoltStrength {
  readonly yieldMPa: number;
  readonly tensileMPa: number;
  /** As its standard writes it; absent where figures alone were given. */
  readonly className?: string;
}

/**
 * @returns undefined where nothing was told; refused when the class does not exist for the thread, when one of two
 *          figures is missing, or when they contradict each other
 */
export function strengthOf(given: GivenStrength, thread: Thread): Result<BoltStrength | undefined> {
  const read = given.propertyClass === undefined ? undefined : readPropertyClass(given.propertyClass, thread);
  if (read?.ok === false) return read;
  const yieldMPa = given.yieldStrengthMPa ?? read?.value.yieldStrengthMPa;
  const tensileMPa = given.tensileStrengthMPa ?? read?.value.tensileStrengthMPa;
  if (yieldMPa === undefined && tensileMPa === undefined) return ok(undefined);
  if (yieldMPa === undefined)
    return invalid('yieldStrengthMPa', 'It is missing.', 'yield strength beside the tensile, MPa');
  if (tensileMPa === undefined)
    return invalid('tensileStrengthMPa', 'It is missing.', 'tensile strength beside the yield, MPa');
  if (tensileMPa <= yieldMPa)
    return invalid(
      'tensileStrengthMPa',
      `${tensileMPa} MPa is not above the yield strength.`,
      `more than ${yieldMPa} MPa`,
    );
  return ok({ yieldMPa, tensileMPa, ...(read === undefined ? {} : { className: read.value.name }) });
}
