import { createRootRoute } from '@tanstack/react-router';
import { NoSuchPlace } from './no-such-place.tsx';
import { Shell } from './shell.tsx';

export const rootRoute = createRootRoute({ component: Shell, notFoundComponent: NoSuchPlace });
