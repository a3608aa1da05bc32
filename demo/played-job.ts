import { aimOf, stepAt } from '@clampwright/core/procedure';
import {
  type CellRef,
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
  type PersonRef,
  startOfChain,
  type Trace,
} from '@clampwright/core/record';
import type { Tool } from '@clampwright/core/wrench';
import { looseFastener, modelFor, type SimulatedModel, simulatePull } from '@clampwright/intake/simulated';
import { demoId } from './identity.ts';

type Fault = Parameters<typeof simulatePull>[0]['fault'];
type Fastener = Parameters<typeof simulatePull>[0]['fastener'];

/** From one thing done to the next. */
const STEP_MS = 20_000;

/** A job of the demo while it is being played: a thing with a life, with its own clock and its own fasteners. */
export class PlayedJob {
  readonly sheet: JobSheet;
  readonly traces: Record<string, Trace> = {};
  entries: readonly Entry[];
  state: JobState;
  #nowMs: number;
  readonly #fasteners = new Map<string, Fastener>();

  constructor(sheet: JobSheet, by: PersonRef, startMs: number) {
    this.sheet = sheet;
    this.#nowMs = startMs;
    const draft = openJob(sheet, { id: this.#nextId(0), now: this.#now(), by });
    if (!draft.ok) throw new Error(`the demo opens a job: ${JSON.stringify(draft.failure)}`);
    this.entries = chain(startOfChain(sheet.id), [draft.value]);
    this.state = fold(this.entries);
  }

  /** Lets time go by. */
  wait(minutes: number): this {
    this.#nowMs += minutes * 60_000;
    return this;
  }

  /** Does what must be accepted: the demo is told as it could have been. */
  do(command: Command, by: PersonRef, more: Partial<DecisionContext> = {}): this {
    this.#nowMs += STEP_MS;
    const context = { entryId: this.#nextId(this.state.lastSeq), now: this.#now(), by, ...more };
    const drafts = decide(this.state, command, context);
    if (!drafts.ok) throw new Error(`the demo plays ${command.kind}: ${JSON.stringify(drafts.failure)}`);
    for (const entry of chain(headAfter(this.entries.at(-1)!), drafts.value)) {
      this.entries = [...this.entries, entry];
      this.state = foldOn(this.state, entry);
    }
    return this;
  }

  take(tool: Tool, by: PersonRef, jointRefs: readonly string[]): this {
    return this.do(
      {
        kind: 'take-tool',
        wrenchId: tool.wrench.id,
        ...(tool.adapter ? { adapterId: tool.adapter.id } : {}),
        ...(tool.extension ? { extensionId: tool.extension.id } : {}),
        jointRefs: [...jointRefs],
      },
      by,
      { tool },
    );
  }

  /** One pull of the simulated wrench on the next position of a joint. */
  pull(jointRef: string, by: PersonRef, fault: Fault = 'none'): this {
    const joint = this.state.joints.find(({ ref }) => ref === jointRef);
    const cell = joint?.next;
    const tool = joint?.tools.at(-1);
    if (!joint || !cell || !tool)
      throw new Error(`the demo pulls where a position of ${jointRef} waits and a wrench was taken`);
    return this.do(this.#simulated(cell, tool, fault), by);
  }

  /** Pulls until a joint is done, or until so many pulls were made. */
  pullOn(jointRef: string, by: PersonRef, most = Number.POSITIVE_INFINITY): this {
    for (let pulls = 0; pulls < most && this.state.joints.find(({ ref }) => ref === jointRef)?.next; pulls++) {
      this.#mend(jointRef, by);
      this.pull(jointRef, by);
      this.#mend(jointRef, by);
    }
    return this;
  }

  /** What a sensible technician does with a pull that was not within. */
  #mend(jointRef: string, by: PersonRef): void {
    const joint = this.state.joints.find(({ ref }) => ref === jointRef);
    const cell = joint?.cells.flat().find(({ need }) => need === 'loosen' || need === 'replace');
    if (!cell) return;
    const how = cell.need === 'replace' ? 'fastener-replaced' : 'loosened';
    this.#fasteners.delete(`${jointRef}/${cell.ref.position}`);
    this.do(
      { kind: 'rework', jointRef, position: cell.ref.position, how, reason: 'The pull was not within its limits.' },
      by,
    );
  }

  #simulated(cell: CellRef, tool: Tool, fault: Fault): IncomingPull {
    const joint = this.state.joints.find(({ ref }) => ref === cell.jointRef)!;
    const content = this.sheet.joints.find(({ ref }) => ref === cell.jointRef)!.joint.content;
    const step = joint.steps.find(({ stage, round }) => stage === cell.stage && round === cell.round)!;
    const model = modelFor(content, tool);
    const aim = aimOf(stepAt(step, cell.position), tool);
    if (!model.ok || !aim.ok) throw new Error('the demo’s tools and joints fit each other');
    const { torque, angle, angleFromNm } = aim.value;
    const key = `${cell.jointRef}/${cell.position}`;
    const fastener = this.#fasteners.get(key) ?? this.#newFastener(model.value, key);
    const played = simulatePull({
      model: model.value,
      aim: angle
        ? { angleDeg: angle.turnDeg, angleFromNm, speedLimitDegPerS: step.speedLimitDegPerS }
        : { torqueNm: torque?.settingNm ?? 0 },
      fault,
      seed: this.state.lastSeq * 7919 + cell.position,
      fastener,
    });
    this.#fasteners.set(key, played.fastener);
    const id = this.#nextId(this.state.lastSeq);
    this.traces[id] = played.trace;
    return {
      kind: 'record-pull',
      id,
      jointRef: cell.jointRef,
      position: cell.position,
      stage: cell.stage,
      round: cell.round,
      source: { kind: 'simulated' },
      takenAt: new Date(this.#nowMs + STEP_MS).toISOString(),
      shown: {
        torque: { text: String(played.shownTorqueNm), unit: 'N·m' },
        ...(tool.wrench.angleResolutionDeg === undefined
          ? {}
          : { angle: { text: String(played.shownAngleDeg), unit: 'deg' } }),
      },
      shownTorqueNm: played.shownTorqueNm,
      ...(tool.wrench.angleResolutionDeg === undefined
        ? {}
        : { shownAngleDeg: played.shownAngleDeg, fastestDegPerS: played.fastestDegPerS }),
      trace: played.trace,
    };
  }

  #newFastener(model: SimulatedModel, key: string): Fastener {
    const seed = Number.parseInt(demoId(`${this.sheet.id} fastener ${key}`).slice(0, 7), 16);
    return looseFastener(model.joint, seed);
  }

  #now = (): string => new Date(this.#nowMs).toISOString();

  #nextId(after: number): string {
    return demoId(`${this.sheet.id} entry ${after + 1}`);
  }
}
