import { secureHeaders } from 'hono/secure-headers';

/** Nothing is loaded from outside and nobody may put us in a frame. */
export const safeHeaders = secureHeaders({
  contentSecurityPolicy: {
    defaultSrc: ["'self'"],
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
