import type { JointContent } from '@clampwright/core/joint';
import { wrenchSetting } from '@clampwright/core/procedure';
import {
  type Command,
  chain,
  type DecisionContext,
  decide,
  type Entry,
  fold,
  foldOn,
  headAfter,
  type IncomingPull,
  type JobSheet,
  type JobState,
  openJob,
  type Pull,
  type RecordFile,
  recordFile,
  sealChain,
  startOfChain,
} from '@clampwright/core/record';
import { id, lead, sheetOf, technician, tool } from './ropeway.ts';

const second = (n: number): string => new Date(Date.UTC(2026, 2, 4, 6, 30, n)).toISOString();

/** A job in the making: commands must be accepted, a new one comes every twenty seconds. */
export class JobInHand {
  entries: readonly Entry[];
  state: JobState;

  constructor(joints: readonly JointContent[], more: Partial<JobSheet> = {}) {
    const sheet = sheetOf(joints, more);
    const draft = openJob(sheet, { id: id(1), now: second(0), by: lead });
    if (!draft.ok) throw new Error(JSON.stringify(draft.failure));
    this.entries = chain(startOfChain(sheet.id), [draft.value]);
    this.state = fold(this.entries);
  }

  get now(): string {
    return second(this.state.lastSeq * 20);
  }

  get lastId(): string {
    return this.entries.at(-1)!.id;
  }

  do(command: Command, more: Partial<DecisionContext> = {}): void {
    const context = {
      entryId: id(100_000 + this.state.lastSeq),
      now: this.now,
      by: technician,
      tool,
      pulled: this.#pulled(command),
      ...more,
    };
    const drafts = decide(this.state, command, context);
    if (!drafts.ok) throw new Error(JSON.stringify(drafts.failure));
    const added = chain(headAfter(this.entries.at(-1)!), drafts.value);
    this.entries = [...this.entries, ...added];
    this.state = added.reduce((state, entry) => foldOn(state, entry), this.state);
  }

  #pulled(command: Command): Pull | undefined {
    const body =
      command.kind === 'move-pull' ? this.entries.find((entry) => entry.id === command.pullId)?.body : undefined;
    return body?.kind === 'pull' ? body.pull : undefined;
  }

  /** A pull on the next cell of a joint: so far from the middle of each window, in half widths. */
  pull(jointRef: string, offset: number, more: Partial<IncomingPull> = {}): void {
    const joint = this.state.joints.find(({ ref }) => ref === jointRef)!;
    const cell = { ...joint.next!, ...(more.position === undefined ? {} : { position: more.position }) };
    const step = joint.steps.find(({ stage, round }) => stage === cell.stage && round === cell.round)!;
    const torqueNm = step.torque
      ? step.torque.targetNm + (offset * (step.torque.upperNm - step.torque.lowerNm)) / 2
      : 520;
    const angleDeg = step.angle
      ? step.angle.targetDeg + (offset * (step.angle.upperDeg - step.angle.lowerDeg)) / 2
      : undefined;
    const setting = wrenchSetting(torqueNm, tool.wrench.leverMm, joint.tools.at(-1)?.adapter);
    if (!setting.ok) throw new Error(JSON.stringify(setting.failure));
    const shownNm = Math.round(setting.value.settingNm * 2) / 2;
    const turned = angleDeg === undefined ? {} : { angle: { text: angleDeg.toFixed(1), unit: 'deg' } };
    this.do({
      kind: 'record-pull',
      id: id(200_000 + this.state.lastSeq),
      jointRef,
      source: { kind: 'simulated' },
      takenAt: this.now,
      shown: { torque: { text: shownNm.toFixed(1), unit: 'N·m' }, ...turned },
      shownTorqueNm: shownNm,
      ...(angleDeg === undefined ? {} : { shownAngleDeg: angleDeg, fastestDegPerS: 14 }),
      ...more,
    });
  }

  /** Works on, all within, until so many pulls are done, a stage and round is reached, or the joint is done. */
  work(jointRef: string, { pulls = Number.POSITIVE_INFINITY, stage = 99, round = 1 } = {}): void {
    for (let done = 0; done < pulls; done++) {
      const next = this.state.joints.find(({ ref }) => ref === jointRef)!.next;
      if (!next || next.stage > stage || (next.stage === stage && next.round >= round)) return;
      this.pull(jointRef, 0.55 * Math.sin(this.state.lastSeq * 1.7));
    }
  }

  signAndClose(): void {
    this.do({ kind: 'sign-off', statement: 'All rings tightened by the sheet, tools cleared.' });
    this.do({ kind: 'close' }, { by: lead });
  }

  sealed(): RecordFile {
    const seed = Uint8Array.from({ length: 32 }, (_, index) => index + 1);
    return recordFile(this.entries, {}, sealChain(this.entries.at(-1)!, seed, this.now));
  }

  unsealed(): RecordFile {
    return recordFile(this.entries, {});
  }
}
