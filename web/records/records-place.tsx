import { PageHeader } from '../parts/page-header.tsx';

export default function RecordsPlace() {
  return <PageHeader title="" />;
}
