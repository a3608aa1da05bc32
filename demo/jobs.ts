import type { JointContent, JointRevision } from '@clampwright/core/joint';
import type { Asset, JobSheet } from '@clampwright/core/record';
import type { Tool, Wrench } from '@clampwright/core/wrench';
import { DRIVE, SHEAVE_TRAIN, TOWER, VEHICLE } from './assets.ts';
import { demoId } from './identity.ts';
import { gearboxCover } from './joints/gearbox-cover.ts';
import { hydraulicFlange } from './joints/hydraulic-flange.ts';
import { returnLineFlange } from './joints/return-line-flange.ts';
import { sheaveHub } from './joints/sheave-hub.ts';
import { towerFlange } from './joints/tower-flange.ts';
import { vehicleWheel } from './joints/vehicle-wheel.ts';
import { LEAD, SECOND_TECHNICIAN, TECHNICIAN } from './people.ts';
import { PlayedJob } from './played-job.ts';
import { DEMO_EXTENSIONS } from './toolbox.ts';

const released = (content: JointContent): JointRevision => ({
  id: demoId(`joint ${content.name}`),
  revision: 1,
  status: 'released',
  content,
});

export const DEMO_JOINTS: readonly JointRevision[] = [
  towerFlange,
  sheaveHub,
  gearboxCover,
  vehicleWheel,
  hydraulicFlange,
  returnLineFlange,
].map(released);

const dayMs = 86_400_000;

function sheet(
  title: string,
  asset: Asset,
  joints: readonly (readonly [label: string, content: JointContent])[],
): JobSheet {
  const numbered = joints.map(([label, content], index) => ({ ref: `J${index + 1}`, label, joint: released(content) }));
  return { id: demoId(`job ${title}`), title, asset, joints: numbered, demo: true };
}

/** The jobs of the demo as they stand on a day: one finished, one half done, two not begun. */
export function demoJobs(now: Date, wrenchesAt: (daysAgo: number) => readonly Wrench[]): readonly PlayedJob[] {
  const wrench = (serial: string, daysAgo: number): Wrench =>
    wrenchesAt(daysAgo).find((candidate) => candidate.serial === serial)!;
  return [
    finishedWheels(now, { wrench: wrench('KH-102', WHEELS_DAYS_AGO) }),
    halfDoneTower(now, { wrench: wrench('KH-103', 1), extension: DEMO_EXTENSIONS[1]! }),
    new PlayedJob(
      sheet('Overhaul of the drive: gearbox cover and tensioning flange', DRIVE, [
        ['Gearbox cover', gearboxCover],
        ['Flange of the tensioning cylinder', hydraulicFlange],
      ]),
      LEAD,
      now.getTime() - 20 * 3_600_000,
    ),
    new PlayedJob(
      sheet('Sheave hub after bearing change', SHEAVE_TRAIN, [['Hub of sheave 3', sheaveHub]]),
      LEAD,
      now.getTime() - 3 * 3_600_000,
    ),
  ];
}

const WHEELS_DAYS_AGO = 12;
const WHEELS = ['Front left', 'Front right', 'Rear left', 'Rear right'] as const;

/** Four wheels, one pull over its limit that was loosened and repeated, signed off and closed. */
function finishedWheels(now: Date, tool: Tool): PlayedJob {
  const wheels = WHEELS.map((label) => [`${label} wheel`, vehicleWheel] as const);
  const job = new PlayedJob(
    sheet('Winter tyres on the service vehicle', VEHICLE, wheels),
    LEAD,
    now.getTime() - WHEELS_DAYS_AGO * dayMs,
  );
  job.wait(15).take(tool, TECHNICIAN, ['J1', 'J2', 'J3', 'J4']);
  for (const ref of ['J1', 'J2', 'J3', 'J4']) {
    if (ref === 'J3') job.pullOn(ref, TECHNICIAN, 6).pull(ref, TECHNICIAN, 'over-run');
    job.pullOn(ref, TECHNICIAN).wait(4);
  }
  job.do({ kind: 'sign-off', statement: 'All four wheels tightened; the driver was told about 50 km.' }, TECHNICIAN);
  return job.wait(5).do({ kind: 'close' }, LEAD);
}

/** Snug and torque done, handed over in the middle of the angle stage. */
function halfDoneTower(now: Date, tool: Tool): PlayedJob {
  const job = new PlayedJob(
    sheet('New flange bolts on tower 7', TOWER, [['Flange between sections 2 and 3', towerFlange]]),
    LEAD,
    now.getTime() - 26 * 3_600_000,
  );
  job.wait(30).take(tool, TECHNICIAN, ['J1']);
  job
    .pullOn('J1', TECHNICIAN, 24 + 9)
    .pull('J1', TECHNICIAN, 'stopped-short')
    .pullOn('J1', TECHNICIAN, 16);
  job.do(
    { kind: 'note', text: 'Weather turned; line stays locked out. Angle stage goes on in the next shift.' },
    TECHNICIAN,
  );
  job.wait(14 * 60).take(tool, SECOND_TECHNICIAN, ['J1']);
  return job.pullOn('J1', SECOND_TECHNICIAN, 7);
}
