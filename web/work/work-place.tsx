import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { NoSuchPlace } from '../app/no-such-place.tsx';
import { jobQuery } from '../jobs/job-query.ts';
import { useLiveJob } from '../jobs/use-live-job.ts';
import { Loading, Trouble } from '../parts/states.tsx';
import { afterEvent, type Live } from './live.ts';
import { WorkScreen } from './work-screen.tsx';
import '../jobs/jobs.css';
import './work.css';

/** The working screen of one joint. */
export default function WorkPlace() {
  const { jobId, jointRef } = useParams({ from: '/jobs/$jobId/work/$jointRef' });
  const job = useQuery(jobQuery(jobId));
  const [heard, setHeard] = useState<Omit<Live, 'isLost'>>({ torque: undefined, wrenches: [] });
  const stream = useLiveJob(jobId, (event) => setHeard((before) => afterEvent(before, event, jointRef)), jointRef);
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
      live={{ ...heard, isLost: stream === 'lost' }}
    />
  );
}
