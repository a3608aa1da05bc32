export { capabilityPicture } from './capability.ts';
export { controlChartPicture } from './control-chart.ts';
export { derivedPictures } from './derived-target.ts';
export { picturesOf } from './pictures-of.ts';
export type { Scribe } from './scribe.ts';
export { wrenchDeviations } from './wrench-deviations.ts';
