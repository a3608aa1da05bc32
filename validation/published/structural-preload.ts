// EN 1090-2, F_p,C of 10.9, kN, on a page about the torque method (read).
export const EN_10_9 = [
  ['M12', '59'],
  ['M16', '110'],
  ['M20', '172'],
  ['M22', '212'],
  ['M24', '247'],
  ['M27', '321'],
  ['M30', '393'],
  ['M36', '572'],
] as const;

// EN 1090-2, F_p,C of 8.8, kN. From memory.
export const EN_8_8 = [
  ['M12', '47'],
  ['M16', '88'],
  ['M20', '137'],
  ['M22', '170'],
  ['M24', '198'],
  ['M27', '257'],
  ['M30', '314'],
  ['M36', '458'],
] as const;

// AISC 360-05, table J3.1, least pretension of A325 and A490, kip (read). A325 has 105 ksi above 1 in in this edition.
export const AISC_INCH = [
  ['1/2-13 UNC', '12', '15'],
  ['5/8-11 UNC', '19', '24'],
  ['3/4-10 UNC', '28', '35'],
  ['7/8-9 UNC', '39', '49'],
  ['1-8 UNC', '51', '64'],
  ['1 1/8-7 UNC', '56', '80'],
  ['1 1/4-7 UNC', '71', '102'],
  ['1 3/8-6 UNC', '85', '121'],
  ['1 1/2-6 UNC', '103', '148'],
] as const;

// AISC 360-05, table J3.1M, least pretension of A325M (830 MPa) and A490M (1040 MPa), kN (read).
export const AISC_METRIC = [
  ['M16', '91', '114'],
  ['M20', '142', '179'],
  ['M22', '176', '221'],
  ['M24', '205', '257'],
  ['M27', '267', '334'],
  ['M30', '326', '408'],
  ['M36', '475', '595'],
] as const;

// F3125 gives A325 120 ksi in every size: least pretension of A325 above 1 in, kip. From memory.
export const F3125_INCH = [
  ['1 1/8-7 UNC', '64'],
  ['1 1/4-7 UNC', '81'],
  ['1 3/8-6 UNC', '97'],
  ['1 1/2-6 UNC', '118'],
] as const;
