export {
  BEARING_STANDARDS,
  type BearingStandard,
  bearingOuterMm,
  clearanceHoleMm,
  HOLE_SERIES,
  type HoleSeries,
  usualBearing,
} from './bearing-face.ts';
export { type BoltFault, boltFault } from './bolt-fault.ts';
export { type FastenerData, fastener } from './fastener.ts';
export { FRICTION_CLASSES, LUBRICATIONS } from './friction-classes.ts';
export { BEARING_PRESSURES, MATERIALS } from './materials.ts';
export {
  HEX_HEADS,
  HEX_NUTS,
  HR_HEADS,
  HV_HEADS,
  HV_NUTS,
  PLAIN_WASHERS,
  PRELOAD_WASHERS,
  SOCKET_HEADS,
} from './metric-faces.ts';
export { type NutClass, nutClassFor, readNutClass } from './nut-class.ts';
export {
  type FrictionRange,
  joinsRows,
  type NewOwnRow,
  newOwnRowSchema,
  type OwnBolt,
  type OwnLubricant,
  type OwnMaterial,
  type OwnRow,
  ownRowSchema,
  standingRows,
  threadOfBolt,
} from './own-row.ts';
export { type BoltDimensions, type OwnThread, type ThreadTold } from './own-thread.ts';
export { type Profile, profileOf, rootDiameterMm } from './profile.ts';
export { PROPERTY_CLASSES, type PropertyClass, readPropertyClass } from './property-class.ts';
export type { Provenance } from './provenance.ts';
export { readThread } from './read-thread.ts';
export { THREADS, type Thread } from './thread.ts';
export { EMBEDDINGS, PRELOAD_SCATTERS, TIGHTENING_FACTORS } from './tightening-methods.ts';
