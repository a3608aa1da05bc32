// `npm start -- --data DIR --port N`: builds what is not built, then serves.
import { build } from './build.js';
import { ROOT } from './steps.js';

build();
process.argv.splice(2, 0, 'serve');
await import(`${ROOT}/cli/dist/main.js`);
