export { type FastenerData, fastener, plausibleTorque } from './fastener.ts';
export { type Profile, profileOf, rootDiameterMm } from './profile.ts';
export { PROPERTY_CLASSES, type PropertyClass, readPropertyClass } from './property-class.ts';
export { readThread } from './read-thread.ts';
export { THREADS, type Thread } from './thread.ts';
