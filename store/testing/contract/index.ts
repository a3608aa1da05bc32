import { describe } from 'vitest';
import { takesLongLists } from './append-many.ts';
import { keepsCare } from './care.ts';
import { keepsDemoApart } from './demo.ts';
import { keepsDevices } from './devices.ts';
import type { OpenStore } from './folder.ts';
import { keepsJobs } from './jobs.ts';
import { keepsPeople } from './people.ts';
import { keepsRegisters } from './registers.ts';
import { keepsSideBySide } from './side-by-side.ts';
import { keepsSigningKey } from './signing-key.ts';

/** What every database product behind the store must hold to. */
export function storeContract(product: string, open: OpenStore): void {
  describe(`store on ${product}`, () => {
    keepsJobs(open);
    keepsSideBySide(open);
    takesLongLists(open);
    keepsRegisters(open);
    keepsCare(open);
    keepsDevices(open);
    keepsPeople(open);
    keepsDemoApart(open);
    keepsSigningKey(open);
  });
}
