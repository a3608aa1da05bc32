import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from './root-route.ts';

const todayRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/',
  component: lazyRouteComponent(() => import('../today/today-place.tsx')),
});

const jobsRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/jobs',
  component: lazyRouteComponent(() => import('../jobs/jobs-place.tsx')),
});

const jobRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/jobs/$jobId',
  component: lazyRouteComponent(() => import('../jobs/job-place.tsx')),
});

const continueRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/jobs/$jobId/continue',
  component: lazyRouteComponent(() => import('../jobs/continue-place.tsx')),
});

const workRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/jobs/$jobId/work/$jointRef',
  component: lazyRouteComponent(() => import('../work/work-place.tsx')),
});

/** The technician's screens, each fetched when it is first opened. */
export const technicianRoutes = [todayRoute, jobsRoute, jobRoute, continueRoute, workRoute] as const;
