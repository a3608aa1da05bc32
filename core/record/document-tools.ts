import { sayDate, sayInstant } from '../language/dates.ts';
import { say } from '../language/say.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { showAngle, showTorque } from '../quantity/show-quantity.ts';
import type { TorqueUnit } from '../quantity/unit.ts';
import type { Adapter, CalibrationSummary, Extension, Wrench } from '../wrench/wrench.ts';
import type { Block, Fact } from './document.ts';
import { type EntryOf, type RecordFacts, type TaggedTool, tagOfPerson } from './document-facts.ts';

/** Each wrench with what was put on it: what it is, its calibration and uncertainty, when and for what it was taken. */
export function toolBlocks(facts: RecordFacts): readonly Block[] {
  if (facts.tools.length === 0) return [];
  return [
    { kind: 'heading', level: 1, text: say(facts.language, 'record.wrenches') },
    ...facts.tools.flatMap((tool) => oneTool(facts, tool)),
    { kind: 'paragraph', text: say(facts.language, 'record.at-the-fastener') },
  ];
}

function oneTool(facts: RecordFacts, { tag, tool, taken }: TaggedTool): readonly Block[] {
  const { language } = facts;
  const { wrench, adapter, extension } = tool;
  const unit = unitOf(facts, taken);
  return [
    {
      kind: 'heading',
      level: 2,
      text: `${tag} ${say(language, 'record.wrench-of', { name: wrench.name, serial: wrench.serial })}`,
    },
    {
      kind: 'facts',
      size: 'normal',
      facts: [
        ...wrenchFacts(wrench, unit, language),
        ...calibrationFacts(wrench.calibration, language),
        {
          label: say(language, 'record.adapter'),
          value: adapter ? sayAdapter(adapter, language) : say(language, 'record.not-used'),
        },
        {
          label: say(language, 'record.extension'),
          value: extension ? sayExtension(extension, unit, language) : say(language, 'record.not-used'),
        },
        { label: say(language, 'record.taken'), value: taken.map((entry) => sayTaken(facts, entry)).join('\n') },
        ...objections(taken, language),
      ],
    },
  ];
}

/** Unit of the first joint that it was taken for. */
function unitOf({ sheet }: RecordFacts, taken: TaggedTool['taken']): TorqueUnit {
  const ref = taken[0]?.body.jointRefs[0];
  return (sheet.joints.find((joint) => joint.ref === ref) ?? sheet.joints[0]!).joint.content.torqueUnit;
}

const mm = (length: number, language: Language): string => `${showNumber(length, language)}\u00a0mm`;
const percent = (share: number, language: Language): string => `${showNumber(share, language)}\u00a0%`;

function wrenchFacts(wrench: Wrench, unit: TorqueUnit, language: Language): readonly Fact[] {
  const torque = (torqueNm: number) => showTorque(torqueNm, unit, language);
  const angle = wrench.angleResolutionDeg === undefined ? [] : [`${showNumber(wrench.angleResolutionDeg, language)}°`];
  return [
    {
      label: say(language, 'record.wrench-type'),
      value: `${say(language, `wrench-type.${wrench.type}`)}, ${wrench.class}`,
    },
    {
      label: say(language, 'record.range'),
      value: say(language, 'record.from-to', { from: torque(wrench.lowestNm), to: torque(wrench.highestNm) }),
    },
    { label: say(language, 'record.resolution'), value: [torque(wrench.resolutionNm), ...angle].join(', ') },
    { label: say(language, 'record.lever'), value: mm(wrench.leverMm, language) },
  ];
}

function calibrationFacts(calibration: CalibrationSummary | undefined, language: Language): readonly Fact[] {
  const label = say(language, 'record.calibration');
  if (!calibration) return [{ label, value: say(language, 'record.not-calibrated') }];
  const { calibratedOn, dueOn, certificate, by } = calibration;
  const value = say(language, 'record.calibrated', {
    on: sayDate(calibratedOn, language),
    due: sayDate(dueOn, language),
    certificate,
    by,
  });
  return [
    { label, value },
    { label: say(language, 'record.deviation'), value: percent(calibration.maximumDeviationPercent, language) },
    { label: say(language, 'record.uncertainty'), value: percent(calibration.expandedUncertaintyPercent, language) },
  ];
}

const sayAdapter = ({ name, lengthMm, angleDeg }: Adapter, language: Language): string =>
  say(language, 'record.adapter-of', { name, length: mm(lengthMm, language), angle: showAngle(angleDeg, language) });

function sayExtension({ name, lengthMm, stiffnessNmPerDeg }: Extension, unit: TorqueUnit, language: Language): string {
  const bar = say(language, 'record.extension-of', { name, length: mm(lengthMm, language) });
  if (stiffnessNmPerDeg === undefined) return bar;
  return `${bar}, ${say(language, 'record.stiffness', { stiffness: `${showTorque(stiffnessNmPerDeg, unit, language)}/°` })}`;
}

const sayTaken = (facts: RecordFacts, { at, by, body }: EntryOf<'tool-taken'>): string =>
  say(facts.language, 'record.taken-for', {
    when: sayInstant(at, facts.language),
    name: `${tagOfPerson(facts, by)} ${by.name}`,
    joints: body.jointRefs.join(', '),
  });

function objections(taken: TaggedTool['taken'], language: Language): readonly Fact[] {
  const told = [...new Set(taken.flatMap(({ body }) => body.objections))];
  return told.length === 0 ? [] : [{ label: say(language, 'record.objections'), value: told.join('\n') }];
}
