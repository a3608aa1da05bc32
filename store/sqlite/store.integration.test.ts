import { openStore } from '../index.ts';
import { storeContract } from '../testing/contract/index.ts';

storeContract('SQLite', openStore);
