import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from './root-route.ts';

const jointsRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/joints',
  component: lazyRouteComponent(() => import('../joints/joints-place.tsx')),
});

const jointRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/joints/$jointId',
  component: lazyRouteComponent(() => import('../joints/joint-place.tsx')),
});

const ownRowsRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/joints/own-rows',
  component: lazyRouteComponent(() => import('../joints/own-rows/own-rows-place.tsx')),
});

const jointEditorRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/joints/$jointId/edit',
  validateSearch: ({ isNew, bring }: { isNew?: unknown; bring?: unknown }) => ({
    ...(isNew === true ? { isNew } : {}),
    ...(bring === undefined ? {} : { bring }),
  }),
  component: lazyRouteComponent(() => import('../joints/editor-place.tsx')),
});

const newJobRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/jobs/new',
  validateSearch: ({ joint }: { joint?: unknown }) => (typeof joint === 'string' ? { joint } : {}),
  component: lazyRouteComponent(() => import('../joints/new-job-place.tsx')),
});

const wrenchesRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/wrenches',
  component: lazyRouteComponent(() => import('../wrenches/wrenches-place.tsx')),
});

const devicesRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/wrenches/devices',
  component: lazyRouteComponent(() => import('../devices/devices-place.tsx')),
});

const wrenchRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/wrenches/$wrenchId',
  component: lazyRouteComponent(() => import('../wrenches/wrench-place.tsx')),
});

const calibrateRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/wrenches/$wrenchId/calibrate',
  component: lazyRouteComponent(() => import('../wrenches/calibrate/calibrate-place.tsx')),
});

const referencesRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/wrenches/references',
  component: lazyRouteComponent(() => import('../wrenches/references/references-place.tsx')),
});

const recallsRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/recalls',
  component: lazyRouteComponent(() => import('../recalls/recalls-place.tsx')),
});

const recallRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/recalls/$recallId',
  component: lazyRouteComponent(() => import('../recalls/recall-place.tsx')),
});

const recordsRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/records',
  component: lazyRouteComponent(() => import('../records/records-place.tsx')),
});

const verifyRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/records/verify',
  component: lazyRouteComponent(() => import('../records/verify-place.tsx')),
});

const benchRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/bench',
  component: lazyRouteComponent(() => import('../bench/bench-place.tsx')),
});

const calculationRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/bench/$name',
  validateSearch: ({ input, units }: { input?: unknown; units?: unknown }) => ({
    ...(input === undefined ? {} : { input }),
    ...(units === undefined ? {} : { units }),
  }),
  component: lazyRouteComponent(() => import('../bench/calculation-place.tsx')),
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
export const leadRoutes = [
  jointsRoute,
  jointRoute,
  ownRowsRoute,
  jointEditorRoute,
  newJobRoute,
  wrenchesRoute,
  devicesRoute,
  wrenchRoute,
  calibrateRoute,
  referencesRoute,
  recallsRoute,
  recallRoute,
  recordsRoute,
  verifyRoute,
  benchRoute,
  calculationRoute,
  workshopRoute,
  importRoute,
] as const;
