import type { Person } from '@clampwright/server/contract';
import { useQueryClient } from '@tanstack/react-query';
import { createContext, lazy, type ReactNode, Suspense, use, useCallback, useMemo, useRef, useState } from 'react';
import { sessionQuery } from './session.ts';

const SignInDialog = lazy(() => import('./sign-in-dialog.tsx'));

interface Who {
  /** Whoever is signed in; asks gently when nobody is. Null: nobody wanted to say. */
  readonly ask: () => Promise<Person | null>;
  /** Asks although somebody is signed in: another pair of hands. */
  readonly change: () => Promise<Person | null>;
}

const WhoContext = createContext<Who | undefined>(undefined);

/** How a screen learns who acts: `const who = useWho(); if (await who.ask()) …`. Looking needs nobody. */
export function useWho(): Who {
  const who = use(WhoContext);
  if (!who) throw new Error('useWho outside of WhoProvider');
  return who;
}

/** Holds the one dialog that asks who is working. */
export function WhoProvider({ children }: { readonly children: ReactNode }) {
  const queries = useQueryClient();
  const [isAsking, setAsking] = useState(false);
  const answer = useRef<(person: Person | null) => void>(undefined);

  const change = useCallback(() => {
    // Whoever asked before gets no answer from this dialog.
    answer.current?.(null);
    setAsking(true);
    return new Promise<Person | null>((resolve) => {
      answer.current = resolve;
    });
  }, []);
  const ask = useCallback(async () => {
    const session = await queries.ensureQueryData(sessionQuery);
    return session.person ?? change();
  }, [queries, change]);
  const done = (person: Person | null) => {
    setAsking(false);
    answer.current?.(person);
  };

  const who = useMemo(() => ({ ask, change }), [ask, change]);
  return (
    <WhoContext value={who}>
      {children}
      {isAsking ? (
        <Suspense>
          <SignInDialog onDone={done} />
        </Suspense>
      ) : null}
    </WhoContext>
  );
}
