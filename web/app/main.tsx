import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { beginWords } from './language.ts';
import { queryClient } from './queries.ts';
import { router } from './router.ts';
import { chosenTheme, showTheme } from './theme.ts';
import './tokens.css';
import './page.css';
import './print.css';
import '../parts/parts.css';

// The server's content policy lets no text be run as code, so the schemas must not try.
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });

showTheme(chosenTheme());
await beginWords();

const root = document.getElementById('root');
if (!root) throw new Error('index.html has no #root');
createRoot(root).render(
  <StrictMode>
    <QueryClientProvider client={queryClient}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  </StrictMode>,
);
