import { PageHeader } from '../parts/page-header.tsx';

export default function WrenchesPlace() {
  return <PageHeader title="" />;
}
