/** Which calibration, which way the load went, and the authors' line through it. */
type PublishedFit = readonly [
  what: 'torque_arm' | 'force_left' | 'force_right',
  run: 'ascending' | 'descending' | 'all',
  slope: string,
  slopeError: string,
  intercept: string,
  correlation: string,
];

// UNH-CORE/turbine-test-bed, commit b5bcd462, calibrations of January 2015 (MIT). Slopes in N·m/(V/V) or N/(V/V).
export const TORQUE_ARM_FITS: readonly PublishedFit[] = [
  ['torque_arm', 'descending', '123108.06827582237', '603.2656378035797', '-3.602043486269963', '0.9999039623402992'],
  ['torque_arm', 'ascending', '123791.23183311448', '275.59997542577537', '-2.8453213693033774', '0.999980174431215'],
  ['torque_arm', 'all', '123436.95673891163', '394.27485949742396', '-3.2081368832621706', '0.9999081899007788'],
  ['force_left', 'descending', '742182.4022503785', '2047.687587538028', '-0.6655473751116006', '0.9999695528780578'],
  ['force_left', 'ascending', '743526.1166582982', '803.5192489770867', '5.3471302621121595', '0.9999953284923698'],
  ['force_left', 'all', '742830.2977054972', '1447.650171449003', '2.3736742279065766', '0.9999658202975812'],
  ['force_right', 'descending', '742506.9801666948', '440.5665992116192', '-19.02525011633611', '0.9999985917455572'],
  ['force_right', 'ascending', '742296.1167894538', '304.163370053292', '-15.086585999021281', '0.9999993283871461'],
  ['force_right', 'all', '742399.8984740668', '516.1393843543232', '-17.05337039438109', '0.99999564991376'],
];

/** Standard errors of the slopes in exact fractions, rounded once: the authors' program takes them from 1 − r², which costs it digits. */
// computed with Python's fractions from the same files
export const EXACT_SLOPE_ERRORS: readonly (readonly [what: string, run: string, slopeError: string])[] = [
  ['torque_arm', 'ascending', '275.599975426500'],
  ['torque_arm', 'descending', '603.265637802896'],
  ['torque_arm', 'all', '394.274859497649'],
  ['force_left', 'ascending', '803.519248974248'],
  ['force_left', 'descending', '2047.68758754081'],
  ['force_left', 'all', '1447.65017145273'],
  ['force_right', 'ascending', '304.163370030133'],
  ['force_right', 'descending', '440.566599204209'],
  ['force_right', 'all', '516.139384353990'],
];
