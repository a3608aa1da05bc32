import { QueryClient } from '@tanstack/react-query';
import { Unreachable } from './api.ts';

/** Asks always, also when the browser believes to be offline: the server is often this very machine. */
export const queryClient = new QueryClient({
  defaultOptions: {
    queries: {
      networkMode: 'always',
      staleTime: 5_000,
      retry: (failures, error) => error instanceof Unreachable && failures < 2,
    },
    mutations: { networkMode: 'always' },
  },
});
