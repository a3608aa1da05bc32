import { PageHeader } from '../parts/page-header.tsx';

export default function JobPlace() {
  return <PageHeader title="" />;
}
