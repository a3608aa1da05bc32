import { PageHeader } from '../parts/page-header.tsx';

export default function WorkshopPlace() {
  return <PageHeader title="" />;
}
