import type { LiveEvent } from '@clampwright/server/contract';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { NoSuchPlace } from '../app/no-such-place.tsx';
import { jobQuery } from '../jobs/job-query.ts';
import { useLiveJob } from '../jobs/use-live-job.ts';
import { Loading, Trouble } from '../parts/states.tsx';
import { WorkScreen } from './work-screen.tsx';
import '../jobs/jobs.css';
import './work.css';

export type LiveTorque = Extract<LiveEvent, { kind: 'torque' }>;

/** The working screen of one joint. */
export default function WorkPlace() {
  const { jobId, jointRef } = useParams({ from: '/jobs/$jobId/work/$jointRef' });
  const job = useQuery(jobQuery(jobId));
  const [torque, setTorque] = useState<LiveTorque>();
  const live = useLiveJob(
    jobId,
    (event) => {
      if (event.kind === 'torque' && event.jointRef === jointRef) setTorque(event);
      // The pull that was shown has become an entry.
      if (event.kind === 'entries') setTorque(undefined);
    },
    jointRef,
  );
  if (job.isError && !job.data) return <Trouble error={job.error} onRetry={() => void job.refetch()} />;
  if (!job.data) return <Loading />;
  const joint = job.data.state.joints.find(({ ref }) => ref === jointRef);
  const jobJoint = job.data.state.sheet.joints.find(({ ref }) => ref === jointRef);
  if (!joint || !jobJoint) return <NoSuchPlace />;
  return (
    <WorkScreen
      key={jointRef}
      job={job.data}
      joint={joint}
      jobJoint={jobJoint}
      liveTorque={torque}
      isLiveLost={live === 'lost'}
    />
  );
}
