import { pulledWith } from '@clampwright/core/joint';
import { type Step, stepAt } from '@clampwright/core/procedure';
import type { JobJoint, JointState } from '@clampwright/core/record';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { JobInHand } from '../jobs/job-in-hand.ts';
import { cellsOfPosition, placeInWork } from '../jobs/place-in-work.ts';
import { ToolInHand } from '../jobs/tool-in-hand.tsx';
import { Notice } from '../parts/notice.tsx';
import { AimPanel } from './aim-panel.tsx';
import { ClosingState } from './closing-state.tsx';
import { ConflictDialog } from './conflict-dialog.tsx';
import { JointDone } from './joint-done.tsx';
import { lastPullOf } from './last-pull.ts';
import { LastVerdict } from './last-verdict.tsx';
import type { Live } from './live.ts';
import { NextThing } from './next-thing.tsx';
import { PositionAttempts } from './position-attempts.tsx';
import { PositionList } from './position-list.tsx';
import { SendingState } from './sending-state.tsx';
import { SignalChoice } from './signal-choice.tsx';
import { usePullSender } from './use-pull-sender.ts';
import { useSignals } from './use-signals.ts';
import { WorkDrawing } from './work-drawing.tsx';
import { WorkStrip } from './work-strip.tsx';

interface WorkScreenProps {
  readonly job: JobInHand;
  readonly joint: JointState;
  readonly jobJoint: JobJoint;
  readonly live: Live;
}

/** What the technician looks at: the joint, the next position, the figure to aim at, the last verdict. */
export function WorkScreen({ job, joint, jobJoint, live }: WorkScreenProps) {
  const { t } = useTranslation();
  const [picked, setPicked] = useState<number>();
  const sender = usePullSender(job.state.jobId, joint.ref);
  const last = lastPullOf(job.entries, joint);
  const signals = useSignals(last);
  const place = placeInWork(joint);
  const unit = jobJoint.joint.content.torqueUnit;
  const [seenSeq, setSeenSeq] = useState(last?.seq);
  if (last?.seq !== seenSeq) {
    setSeenSeq(last?.seq);
    // The picked position got its pull: the order of the round takes over again.
    if (last?.position === picked) setPicked(undefined);
  }
  const position = picked ?? joint.next?.position;
  const cell = position === undefined ? undefined : place.cells[position - 1];
  const step = position === undefined ? place.step : stepAt(place.step, position);
  const isOver = job.state.status === 'closed';
  const pick = (chosen: number | undefined) => setPicked(chosen === joint.next?.position ? undefined : chosen);
  return (
    <div className="work">
      <div className="work-top">
        <WorkStrip job={job} jobJoint={jobJoint} joint={joint} place={place} />
        {live.isLost ? <Notice kind="alarm" title={t('work.live-lost')} /> : null}
      </div>
      <div className="work-aim">
        {cell && !isOver ? (
          <AimPanel
            cell={cell}
            step={step}
            wholeNm={jobJoint.joint.content.stages[step.stage - 1]?.torque?.targetNm}
            tool={joint.tools.at(-1)}
            unit={unit}
            together={togetherWith(jobJoint, step, cell.ref.position)}
            isPicked={picked !== undefined}
            liveTorque={live.torque}
            onBack={() => setPicked(undefined)}
          />
        ) : null}
        <ClosingState joint={joint} step={place.step} />
        {joint.next ? null : <JointDone job={job} joint={joint} />}
      </div>
      <div className="work-do">
        <SendingState sender={sender} unit={unit} />
        {cell && !isOver ? (
          <NextThing job={job} joint={joint} jobJoint={jobJoint} step={step} cell={cell} sender={sender} live={live} />
        ) : null}
      </div>
      <div className="work-last">
        <LastVerdict job={job} joint={joint} jobJoint={jobJoint} last={last} />
      </div>
      <div className="work-drawing">
        <WorkDrawing content={jobJoint.joint.content} joint={joint} place={place} position={position} onPick={pick} />
        <SignalChoice signals={signals.chosen} onChange={signals.choose} />
      </div>
      <div className="work-more">
        {position === undefined ? null : (
          <PositionAttempts
            position={position}
            cells={cellsOfPosition(joint, position)}
            steps={joint.steps}
            entries={job.entries}
            unit={unit}
            state={job.state}
          />
        )}
        <PositionList place={place} position={position} onPick={pick} />
        {joint.tools.length > 0 ? <ToolInHand job={job} joint={joint} /> : null}
      </div>
      {sender.sending.kind === 'clash' ? <ConflictDialog sending={sender.sending} unit={unit} sender={sender} /> : null}
    </div>
  );
}

/** In a joint that is planned for several wrenches. */
function togetherWith({ joint }: JobJoint, { stage, round }: Step, position: number): readonly number[] {
  const { neighbours, stages } = joint.content;
  return neighbours?.plan ? pulledWith(neighbours.plan, stages, { stage, round, position }) : [];
}
