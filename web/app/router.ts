import { createRouter } from '@tanstack/react-router';
import { LoadFailed, Loading } from '../parts/states.tsx';
import { leadRoutes } from './lead-routes.ts';
import { rootRoute } from './root-route.ts';
import { technicianRoutes } from './technician-routes.ts';

export const router = createRouter({
  routeTree: rootRoute.addChildren([...technicianRoutes, ...leadRoutes]),
  defaultPendingComponent: Loading,
  defaultErrorComponent: LoadFailed,
  defaultPreload: 'intent',
  scrollRestoration: true,
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
