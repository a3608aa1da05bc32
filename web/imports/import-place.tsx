import { PageHeader } from '../parts/page-header.tsx';

export default function ImportPlace() {
  return <PageHeader title="" />;
}
