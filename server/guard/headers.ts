import { createHash } from 'node:crypto';
import { secureHeaders } from 'hono/secure-headers';

/** The one style that the client's parts (react-aria) lay into the page themselves; by its digest it alone is let in. */
const PRESSABLE_STYLE = `@layer {
  [data-react-aria-pressable] {
    touch-action: pan-x pan-y pinch-zoom;
  }
}`;
const digest = createHash('sha256').update(PRESSABLE_STYLE).digest('base64');

/** Nothing is loaded from outside and nobody may put us in a frame. */
export const safeHeaders = secureHeaders({
  contentSecurityPolicy: {
    defaultSrc: ["'self'"],
    styleSrc: ["'self'", `'sha256-${digest}'`],
    imgSrc: ["'self'", 'data:', 'blob:'],
    objectSrc: ["'none'"],
    baseUri: ["'none'"],
    formAction: ["'self'"],
    frameAncestors: ["'none'"],
  },
  xFrameOptions: 'DENY',
  referrerPolicy: 'no-referrer',
  permissionsPolicy: { camera: [], microphone: [], geolocation: [], serial: ['self'] },
  // Served over plain http on this machine alone; a promise of https would lock the name out.
  strictTransportSecurity: false,
  // A route may be stricter with what it gives.
  overwrite: false,
});
