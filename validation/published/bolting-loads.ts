/** Size, least tensile load, proof load, lbf. */
type Loads = readonly (readonly [thread: string, tensile: string, proof: string])[];

// ASTM A574, coarse threads, tensile load and proof load by length measurement (secondary table, read).
export const A574_LOADS: Loads = [
  ['#1-64 UNC', '473', '368'],
  ['#2-56 UNC', '666', '518'],
  ['#3-48 UNC', '877', '682'],
  ['#4-40 UNC', '1090', '846'],
  ['#5-40 UNC', '1430', '1110'],
  ['#6-32 UNC', '1640', '1270'],
  ['#8-32 UNC', '2520', '1960'],
  ['#10-24 UNC', '3150', '2450'],
  ['1/4-20 UNC', '5730', '4450'],
  ['5/16-18 UNC', '9440', '7340'],
  ['3/8-16 UNC', '13900', '10800'],
  ['7/16-14 UNC', '19100', '14900'],
  ['1/2-13 UNC', '25500', '19900'],
  ['5/8-11 UNC', '38400', '30500'],
  ['3/4-10 UNC', '56800', '45100'],
  ['7/8-9 UNC', '78500', '62400'],
  ['1-8 UNC', '103000', '81800'],
  ['1 1/8-7 UNC', '129000', '103000'],
  ['1 1/4-7 UNC', '165000', '131000'],
  ['1 3/8-6 UNC', '196000', '156000'],
  ['1 1/2-6 UNC', '239000', '190000'],
  ['1 3/4-5 UNC', '323000', '256000'],
  ['2-4.5 UNC', '425000', '338000'],
  ['2 1/4-4.5 UNC', '552000', '439000'],
  ['2 1/2-4 UNC', '680000', '540000'],
  ['2 3/4-4 UNC', '838000', '666000'],
  ['3-4 UNC', '1010000', '806000'],
  ['3 1/4-4 UNC', '1210000', '958000'],
  ['3 1/2-4 UNC', '1420000', '1120000'],
  ['3 3/4-4 UNC', '1640000', '1300000'],
  ['4-4 UNC', '1880000', '1500000'],
];

/** Size, least pretension of A325 and A490, kip: 0.7 of the tensile load. */
type Pretensions = readonly (readonly [thread: string, a325: string | undefined, a490: string])[];

// AISC 360-05, table J3.1 (read). A325 above 1 in stands there for 105 ksi, which F3125 has given up.
export const AISC_PRETENSIONS: Pretensions = [
  ['1/2-13 UNC', '12', '15'],
  ['5/8-11 UNC', '19', '24'],
  ['3/4-10 UNC', '28', '35'],
  ['7/8-9 UNC', '39', '49'],
  ['1-8 UNC', '51', '64'],
  ['1 1/8-7 UNC', undefined, '80'],
  ['1 1/4-7 UNC', undefined, '102'],
  ['1 3/8-6 UNC', undefined, '121'],
  ['1 1/2-6 UNC', undefined, '148'],
];
