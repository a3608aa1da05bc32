import type lead from './lead.en.json';
import type technician from './technician.en.json';

/* Makes every key of a catalogue known to the compiler; a key that no catalogue has does not compile. */
declare module 'i18next' {
  interface CustomTypeOptions {
    defaultNS: 'technician';
    resources: { technician: typeof technician; lead: typeof lead };
  }
}
