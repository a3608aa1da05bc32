import { PageHeader } from '../parts/page-header.tsx';

export default function JobsPlace() {
  return <PageHeader title="" />;
}
