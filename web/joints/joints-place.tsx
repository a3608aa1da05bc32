import { PageHeader } from '../parts/page-header.tsx';

export default function JointsPlace() {
  return <PageHeader title="" />;
}
