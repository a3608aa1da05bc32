import { PageHeader } from '../parts/page-header.tsx';

export default function BenchPlace() {
  return <PageHeader title="" />;
}
