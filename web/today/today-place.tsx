import { PageHeader } from '../parts/page-header.tsx';

export default function TodayPlace() {
  return <PageHeader title="" />;
}
