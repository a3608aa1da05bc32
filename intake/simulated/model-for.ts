import { invalid, ok, type Result } from '@clampwright/core/failure';
import { type FastenerData, fastener } from '@clampwright/core/fastener';
import { type JointContent, threadTold } from '@clampwright/core/joint';
import { appliedTorque } from '@clampwright/core/procedure';
import type { Tool } from '@clampwright/core/wrench';
import { type Demand, demandOf } from './demand.ts';
import type { HandModel, JointModel, SimulatedModel, WrenchModel } from './model.ts';
import { preloadPerDegree, torquePerPreloadM } from './preload.ts';

const MEAN_FRICTION = 0.12;
const FRICTION = { mean: MEAN_FRICTION, relativeDeviation: 0.04 };
/** Ring under head or nut over nominal diameter: (16.63 + 13.5)/2 = 15.07 mm for M12 (ISO 4014 face, ISO 273 medium hole; *from memory*). */
const BEARING_OVER_NOMINAL = 1.256;
/** Turning over which the parts come together, as a share of the elastic turning. */
const ALIGNMENT_SHARE = 0.2;

const HAND: HandModel = {
  // an even pull stays under the 30 degrees a second of common practice
  speedDegPerS: 18,
  relativeSpeedDeviation: 0.15,
  strokeDeg: 60,
  swingBackS: 0.5,
  relativeTorqueDeviation: 0.01,
  angleDeviationDeg: 0.8,
};

/**
 * A model that answers to the joint's own numbers: its targets are reached by elastic turning, in about the angle that
 * its angle stages ask for, with the wrench that is in the hand.
 *
 * @returns refused when thread or class are unknown, no stage tells a torque, or the adapter cannot be
 */
export function modelFor(content: JointContent, tool: Tool): Result<SimulatedModel> {
  const data = fastener(threadTold(content.fastener), content.fastener.propertyClass);
  if (!data.ok) return data;
  const demand = demandOf(content);
  if (demand.highestNm === 0)
    return invalid('stages', 'No stage tells a torque.', 'a torque, or one from which angle is counted');
  const wrench = wrenchModel(tool);
  if (!wrench.ok) return wrench;
  return ok({
    joint: {
      ...jointModel(demand, data.value),
      prevailingNm: PREVAILING_SHARE * (content.fastener.prevailing?.highestNm ?? 0),
    },
    wrench: wrench.value,
    hand: HAND,
  });
}

/** What a joint states is the highest; most fasteners take less (common practice). */
const PREVAILING_SHARE = 0.7;

function wrenchModel({ wrench, adapter, extension }: Tool): Result<WrenchModel> {
  const applied = appliedTorque(1, wrench.leverMm, adapter);
  if (!applied.ok) return applied;
  return ok({
    resolutionNm: wrench.resolutionNm,
    angleResolutionDeg: wrench.angleResolutionDeg ?? 1,
    noiseNm: 0.0005 * wrench.highestNm,
    sampleHz: 100,
    stiffnessNmPerDeg: wrench.highestNm / 5,
    extensionStiffnessNmPerDeg: extension?.stiffnessNmPerDeg,
    fastenerOverShown: applied.value.factor,
    angleFromNm: 0.1 * wrench.highestNm,
  });
}

function jointModel(demand: Demand, data: FastenerData): Omit<JointModel, 'prevailingNm'> {
  const geometry = {
    pitchMm: data.pitchMm,
    pitchDiameterMm: data.pitchDiameterMm,
    meanBearingDiameterMm: BEARING_OVER_NOMINAL * data.majorDiameterMm,
  };
  const leverM = torquePerPreloadM(geometry, MEAN_FRICTION, MEAN_FRICTION);
  const slopeNPerDeg = demand.slopeNmPerDeg / leverM;
  return {
    ...geometry,
    threadFriction: FRICTION,
    bearingFriction: FRICTION,
    breakAwayRatio: 1.03,
    stiffnessNPerMm: slopeNPerDeg / preloadPerDegree({ ...geometry, stiffnessNPerMm: 1 }),
    alignmentDeg: (ALIGNMENT_SHARE * demand.highestNm) / demand.slopeNmPerDeg,
    // The joint's numbers are taken at their word: a sound fastener reaches them without yielding.
    yieldPreloadN: (1.3 * demand.highestNm) / leverM,
    plasticShare: 0.1,
    plasticSpanDeg: 12,
    freeRunDeg: 25,
  };
}
