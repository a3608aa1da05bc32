import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from './root-route.ts';

const jointsRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/joints',
  component: lazyRouteComponent(() => import('../joints/joints-place.tsx')),
});

const wrenchesRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/wrenches',
  component: lazyRouteComponent(() => import('../wrenches/wrenches-place.tsx')),
});

const recordsRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/records',
  component: lazyRouteComponent(() => import('../records/records-place.tsx')),
});

const benchRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/bench',
  component: lazyRouteComponent(() => import('../bench/bench-place.tsx')),
});

const workshopRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/workshop',
  component: lazyRouteComponent(() => import('../workshop/workshop-place.tsx')),
});

const importRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/jobs/$jobId/import',
  component: lazyRouteComponent(() => import('../imports/import-place.tsx')),
});

/** The lead's and the keeper's screens, each fetched when it is first opened. */
export const leadRoutes = [jointsRoute, wrenchesRoute, recordsRoute, benchRoute, workshopRoute, importRoute] as const;
