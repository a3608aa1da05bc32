import { PageHeader } from '../parts/page-header.tsx';

export default function WorkPlace() {
  return <PageHeader title="" />;
}
