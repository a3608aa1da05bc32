import { describe, expect, it } from 'vitest';
import { jointContentSchema } from '../joint/joint.ts';
import { aJoint } from '../joint/testing/a-joint.ts';
import { calibrationSchema } from './calibration.ts';
import { aCalibration } from './testing/a-calibration.ts';
import { aWrench } from './testing/a-wrench.ts';
import { adapterSchema, extensionSchema, wrenchSchema } from './wrench.ts';

describe('what was kept before calibrations knew their points', () => {
  it('is still read, and comes back as it was', () => {
    const wrench = aWrench();
    expect(wrenchSchema.parse(wrench)).toEqual(wrench);
    const adapter = { id: wrench.id, name: 'Crowfoot', lengthMm: 50, angleDeg: 0 };
    expect(adapterSchema.parse(adapter)).toEqual(adapter);
    const extension = { id: wrench.id, name: 'Bar', lengthMm: 250 };
    expect(extensionSchema.parse(extension)).toEqual(extension);
    expect(jointContentSchema.parse(aJoint({}))).toEqual(aJoint({}));
  });
});

describe('a whole calibration', () => {
  it('is read with reference, both runs and conditions', () => {
    const whole = aCalibration({ asLeft: aCalibration().asFound, note: 'Spring set anew.' });
    expect(calibrationSchema.parse(whole)).toEqual(whole);
  });
});
