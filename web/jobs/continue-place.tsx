import { useQuery } from '@tanstack/react-query';
import { Navigate, useParams } from '@tanstack/react-router';
import { Loading, Trouble } from '../parts/states.tsx';
import { jobQuery } from './job-query.ts';
import { jointToContinue } from './joint-to-continue.ts';

/** Leads straight to where the work on a job was left. */
export default function ContinuePlace() {
  const { jobId } = useParams({ from: '/jobs/$jobId/continue' });
  const job = useQuery(jobQuery(jobId));
  if (job.isError) return <Trouble error={job.error} onRetry={() => void job.refetch()} />;
  if (!job.data) return <Loading />;
  const jointRef = jointToContinue(job.data.state);
  return jointRef === undefined ? (
    <Navigate to="/jobs/$jobId" params={{ jobId }} replace />
  ) : (
    <Navigate to="/jobs/$jobId/work/$jointRef" params={{ jobId, jointRef }} replace />
  );
}
