import type { ToldPull } from '@clampwright/core/line';

/** What is heard of a joining system. */
export type JoiningSystemEvent =
  | { readonly kind: 'connected'; readonly systems: readonly string[] }
  /** `certificate`: the server shows one that nobody has trusted yet, SHA-256 in hexadecimal. */
  | { readonly kind: 'lost'; readonly detail: string; readonly certificate?: string }
  | { readonly kind: 'unreadable'; readonly message: string; readonly raw: string };

/** What is to be done with a result that is a pull. */
export interface ResultTaker {
  /** Stores the pull; true once it is kept or known to be kept, and only then is it acknowledged to the system. */
  readonly take: (pull: ToldPull, raw: string) => Promise<boolean>;
  readonly tell: (event: JoiningSystemEvent) => void;
}
