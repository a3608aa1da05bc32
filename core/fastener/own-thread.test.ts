import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from '../failure/parse.ts';
import { fastener } from './fastener.ts';
import { type OwnThread, threadSchema } from './own-thread.ts';
import { readThread } from './read-thread.ts';
import { THREADS } from './thread.ts';

const tieRod: OwnThread = { designation: 'Tie rod 23', system: 'ISO metric', majorDiameterMm: 23, pitchMm: 2 };

const read = (more: Partial<OwnThread> = {}) => fastener({ ...tieRod, ...more }, '8.8');

describe('a bolt of one’s own', () => {
  it('with the dimensions of a shipped thread has its figures', () => {
    const metric = THREADS.filter(({ system }) => system === 'ISO metric');
    fc.assert(
      fc.property(fc.constantFrom(...metric), ({ majorDiameterMm, pitchMm, designation }) => {
        const own = fastener({ designation: 'Own', system: 'ISO metric', majorDiameterMm, pitchMm });
        const shipped = fastener(designation);
        if (!own.ok || !shipped.ok) throw new Error('refused');
        const { pitchDiameterMm, minorDiameterMm, rootDiameterMm, stressAreaMm2 } = shipped.value;
        expect(own.value).toMatchObject({ pitchDiameterMm, minorDiameterMm, rootDiameterMm, stressAreaMm2 });
      }),
    );
  });

  it('says what was worked out, and nothing where all was given', () => {
    expect(read()).toMatchObject({
      value: {
        series: 'own',
        workedOut: {
          code: 'bolt-worked-out',
          message: expect.stringMatching(/^Tie rod 23: pitch diameter, minor .*ISO 68-1, ISO 898-1\), not given\.$/),
        },
        remarks: [{ code: 'class-iso-898-1' }],
      },
    });
    const given = { pitchDiameterMm: 21.7, minorDiameterMm: 20.83, rootDiameterMm: 20.5, stressAreaMm2: 350 };
    const all = read(given);
    expect(all).toMatchObject({ value: { ...given, proofLoadN: 350 * 600 } });
    expect(all.ok && all.value.workedOut).toBeUndefined();
  });

  it('lets what is worked out follow from what is given', () => {
    const waist = read({ minorDiameterMm: 19 });
    expect(waist).toMatchObject({ value: { rootDiameterMm: expect.closeTo(19 - (2 * Math.sqrt(3)) / 12, 12) } });
    expect(waist.ok && waist.value.stressAreaMm2).toBeLessThan(read().ok ? 350 : 0);
  });

  it.each<[Partial<OwnThread>, string, string]>([
    [{ pitchMm: 25 }, 'thread.pitchMm', 'A pitch of 25 mm leaves no core of a bolt of 23 mm.'],
    [{ pitchDiameterMm: 23 }, 'thread.pitchDiameterMm', 'is not less than the nominal diameter, 23 mm'],
    [{ minorDiameterMm: 24 }, 'thread.minorDiameterMm', 'is not less than the nominal diameter, 23 mm'],
    [{ minorDiameterMm: 22.5 }, 'thread.minorDiameterMm', 'is not less than the pitch diameter, 21.7 mm'],
    [{ pitchDiameterMm: 20 }, 'thread.pitchDiameterMm', 'is not more than the minor diameter, 20.83 mm'],
    [{ rootDiameterMm: 21 }, 'thread.rootDiameterMm', 'is not at most the minor diameter'],
    [{ stressAreaMm2: 450 }, 'thread.stressAreaMm2', 'not less than what the nominal diameter encloses, 415.5 mm²'],
    [{ stressAreaMm2: 35 }, 'thread.stressAreaMm2', 'not at least what the root diameter encloses'],
    [{ holeMm: 22 }, 'thread.holeMm', 'is not at least the nominal diameter, 23 mm'],
    [{ bearingOuterMm: 24, holeMm: 25 }, 'thread.bearingOuterMm', 'is not more than the hole, 25 mm'],
    [{ bearingOuterMm: 22 }, 'thread.bearingOuterMm', 'is not more than the nominal diameter, 23 mm'],
    [{ shankDiameterMm: 26, holeMm: 25 }, 'thread.shankDiameterMm', 'is not at most the hole, 25 mm'],
  ])('is refused where its dimensions contradict: %j', (wrong, field, message) => {
    expect(read(wrong)).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field, message: expect.stringContaining(message) },
    });
  });

  it('is refused a class that does not exist for its size, like any other', () => {
    expect(fastener({ ...tieRod, majorDiameterMm: 23 }, '9.8')).toMatchObject({ failure: { field: 'propertyClass' } });
    expect(fastener(tieRod, 'grade 5')).toMatchObject({ failure: { field: 'propertyClass' } });
  });

  it('of inch size takes the head and hole of the shipped size as thick', () => {
    const inch = { designation: 'Old stud', system: 'Unified', majorDiameterMm: 19.05, pitchMm: 2 } as const;
    expect(readThread(inch)).toMatchObject({ value: { size: '3/4' } });
  });
});

describe('a thread as it is told', () => {
  it.each([
    [{ majorDiameterMm: 23, pitchMm: 2 }, 'designation', 'It is missing.'],
    [{ ...tieRod, diameter: 3 }, 'diameter', 'There is no field diameter here.'],
    [{ ...tieRod, pitchMm: 0 }, 'pitchMm', '0 is too small.'],
  ])('names the field of a bolt that cannot be read: %j', (told, field, message) => {
    expect(parse(threadSchema, told)).toMatchObject({ failure: { field, message } });
  });

  it.each([
    [undefined, 'It is missing.'],
    [12, '12 fits none of the forms.'],
  ])('%j is none', (told, message) => {
    expect(parse(threadSchema, told)).toMatchObject({
      failure: { message, expected: expect.stringContaining('M12x1.25') },
    });
  });
});
