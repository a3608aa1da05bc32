import { createContext, type ReactNode, use, useMemo, useState } from 'react';
import type { Fault } from './fault.ts';
import { faultOf, faultsWithin } from './fault.ts';
import { useFaultWords } from './fault-words.ts';

interface Faults {
  /** Words for what is wrong with a field, once it was left or everything was asked for. */
  readonly problem: (field: string) => string | undefined;
  /** The same for a place as a whole, without the fields that tell for themselves. */
  readonly problems: (place: string, shown: readonly string[]) => readonly string[];
  readonly leave: (field: string) => void;
}

const FaultsContext = createContext<Faults>({ problem: () => undefined, problems: () => [], leave: () => undefined });

/** What is wrong, for the field that shows it. */
export const useFaults = (): Faults => use(FaultsContext);

interface FaultsProviderProps {
  readonly faults: readonly Fault[];
  /** Tells everything, also of fields that nobody has been in. */
  readonly isAskedFor: boolean;
  readonly children: ReactNode;
}

/** These need no more typing to be known for certain. */
const TOLD_AT_ONCE: readonly string[] = ['invalid', 'mend'];

/** A fault is told beside its field, and not before somebody has been there. */
export function FaultsProvider({ faults, isAskedFor, children }: FaultsProviderProps) {
  const words = useFaultWords();
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const value = useMemo<Faults>(() => {
    const isTold = (fault: Fault) => isAskedFor || left.has(fault.field) || TOLD_AT_ONCE.includes(fault.finding.kind);
    return {
      problem: (field) => {
        const fault = faultOf(faults, field);
        return fault && isTold(fault) ? words(fault.finding, true) : undefined;
      },
      problems: (place, shown) =>
        faultsWithin(faults, place, shown)
          .filter(isTold)
          .map((fault) => words(fault.finding)),
      leave: (field) => setLeft((before) => (before.has(field) ? before : new Set([...before, field]))),
    };
  }, [faults, isAskedFor, left, words]);
  return <FaultsContext value={value}>{children}</FaultsContext>;
}
