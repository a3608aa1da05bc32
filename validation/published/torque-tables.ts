/** Torque by the short form: thread, tension on its stress area psi, nut factor, torque printed, lbf·ft. */
type ShortForms = readonly (readonly [thread: string, stressPsi: number, nutFactor: number, torqueLbfFt: string])[];

// General bolt tightening torque, p. 14 of a safety guide for conveyors: grades 2, 5, 8 at 43 000, 69 000, 98 000 psi (secondary).
export const GUIDE_TORQUES: ShortForms = [
  ['1/4-20 UNC', 43000, 0.22, '6'],
  ['1/4-20 UNC', 69000, 0.20, '9'],
  ['1/4-20 UNC', 69000, 0.22, '10'],
  ['1/4-20 UNC', 98000, 0.20, '13'],
  ['1/4-20 UNC', 98000, 0.22, '14'],
  ['1/4-28 UNF', 43000, 0.20, '7'],
  ['1/4-28 UNF', 98000, 0.20, '15'],
  ['1/4-28 UNF', 98000, 0.22, '16'],
  ['5/16-18 UNC', 43000, 0.22, '13'],
  ['5/16-18 UNC', 69000, 0.20, '19'],
  ['5/16-18 UNC', 69000, 0.22, '21'],
  ['5/16-18 UNC', 98000, 0.20, '27'],
  ['5/16-24 UNF', 43000, 0.20, '13'],
  ['5/16-24 UNF', 43000, 0.22, '14'],
  ['5/16-24 UNF', 69000, 0.20, '21'],
  ['5/16-24 UNF', 69000, 0.22, '23'],
  ['5/16-24 UNF', 98000, 0.20, '30'],
  ['5/16-24 UNF', 98000, 0.22, '33'],
  ['3/8-16 UNC', 43000, 0.20, '21'],
  ['3/8-16 UNC', 43000, 0.22, '23'],
  ['3/8-16 UNC', 69000, 0.22, '37'],
  ['3/8-16 UNC', 98000, 0.20, '47'],
  ['3/8-16 UNC', 98000, 0.22, '52'],
  ['3/8-24 UNF', 43000, 0.20, '24'],
  ['3/8-24 UNF', 43000, 0.22, '26'],
  ['3/8-24 UNF', 69000, 0.20, '38'],
  ['3/8-24 UNF', 69000, 0.22, '42'],
  ['3/8-24 UNF', 98000, 0.20, '54'],
  ['3/8-24 UNF', 98000, 0.22, '59'],
  ['7/16-14 UNC', 43000, 0.20, '33'],
  ['7/16-14 UNC', 43000, 0.22, '37'],
  ['7/16-14 UNC', 69000, 0.20, '53'],
  ['7/16-14 UNC', 98000, 0.22, '83'],
  ['7/16-20 UNF', 43000, 0.20, '37'],
  ['7/16-20 UNF', 43000, 0.22, '41'],
  ['7/16-20 UNF', 69000, 0.20, '60'],
  ['7/16-20 UNF', 69000, 0.22, '66'],
  ['7/16-20 UNF', 98000, 0.20, '85'],
  ['7/16-20 UNF', 98000, 0.22, '93'],
  ['1/2-13 UNC', 43000, 0.22, '56'],
  ['1/2-13 UNC', 69000, 0.20, '82'],
  ['1/2-13 UNC', 98000, 0.20, '116'],
  ['1/2-13 UNC', 98000, 0.22, '127'],
  ['1/2-20 UNF', 69000, 0.20, '92'],
  ['1/2-20 UNF', 69000, 0.22, '101'],
  ['1/2-20 UNF', 98000, 0.22, '144'],
  ['9/16-12 UNC', 43000, 0.20, '73'],
  ['9/16-12 UNC', 69000, 0.20, '118'],
  ['9/16-12 UNC', 98000, 0.20, '167'],
  ['9/16-18 UNF', 43000, 0.22, '90'],
  ['9/16-18 UNF', 69000, 0.20, '131'],
  ['9/16-18 UNF', 69000, 0.22, '144'],
  ['9/16-18 UNF', 98000, 0.20, '186'],
  ['5/8-11 UNC', 43000, 0.20, '101'],
  ['5/8-11 UNC', 69000, 0.20, '162'],
  ['5/8-11 UNC', 98000, 0.20, '231'],
  ['5/8-18 UNF', 43000, 0.20, '115'],
  ['5/8-18 UNF', 43000, 0.22, '126'],
  ['5/8-18 UNF', 69000, 0.20, '184'],
  ['5/8-18 UNF', 69000, 0.22, '202'],
  ['5/8-18 UNF', 98000, 0.20, '261'],
  ['5/8-18 UNF', 98000, 0.22, '287'],
  ['3/4-10 UNC', 43000, 0.20, '180'],
  ['3/4-10 UNC', 43000, 0.22, '197'],
  ['3/4-10 UNC', 69000, 0.20, '288'],
  ['3/4-10 UNC', 69000, 0.22, '317'],
  ['3/4-10 UNC', 98000, 0.20, '409'],
  ['3/4-10 UNC', 98000, 0.22, '450'],
  ['3/4-16 UNF', 43000, 0.20, '200'],
  ['3/4-16 UNF', 43000, 0.22, '221'],
  ['3/4-16 UNF', 69000, 0.20, '322'],
  ['3/4-16 UNF', 69000, 0.22, '354'],
  ['3/4-16 UNF', 98000, 0.22, '503'],
];

// A fastening textbook, p. 85: No. 10, 1275 lbf, torque lbf·in.
export const TEXTBOOK_NUMBER_10: readonly (readonly [nutFactor: number, torqueLbfIn: string])[] = [
  [0.3, '72.7'],
  [0.25, '60.6'],
  [0.2, '48.5'],
  [0.15, '36.3'],
  [0.1, '24.2'],
];

/** Clamp load at 75 % of the proof load, lbf; torque dry (K 0.20) and lubricated (K 0.15), lbf·in. */
type SaeRows = readonly (readonly [thread: string, grade: string, clampLbf: string, dry: string, lubricated: string])[];

// Suggested torques for SAE J429 grades, technical data sheet (secondary); it rounds loads to 20 lbf and torques to 1 lbf·in.
export const SAE_SMALL: SaeRows = [
  ['#4-48 UNF', 'grade 2', '280', '6', '5'],
  ['#6-40 UNF', 'grade 2', '420', '12', '9'],
  ['#8-32 UNC', 'grade 2', '580', '19', '14'],
  ['#6-32 UNC', 'grade 5', '580', '16', '12'],
  ['#8-32 UNC', 'grade 5', '900', '30', '22'],
  ['#4-40 UNC', 'grade 8', '540', '12', '9'],
  ['#4-48 UNF', 'grade 8', '600', '13', '10'],
  ['#6-32 UNC', 'grade 8', '820', '23', '17'],
  ['#6-40 UNF', 'grade 8', '920', '25', '19'],
  ['#8-32 UNC', 'grade 8', '1260', '41', '31'],
];

/** Clamp load at 75 % of the proof load, lbf. */
type Clamps = readonly (readonly [thread: string, grade: string, clampLbf: string])[];

// The same sheet, larger sizes; loads to 50 lbf. It prints 10 700 for 1/2-20 grade 5, where its own rule gives 10 194.
export const SAE_CLAMPS: Clamps = [
  ['1/2-13 UNC', 'grade 5', '9050'],
  ['9/16-18 UNF', 'grade 5', '12950'],
  ['5/8-11 UNC', 'grade 5', '14400'],
  ['5/8-18 UNF', 'grade 5', '16300'],
  ['3/4-16 UNF', 'grade 5', '23800'],
  ['5/8-11 UNC', 'grade 2', '9300'],
  ['5/8-18 UNF', 'grade 2', '10600'],
  ['3/4-10 UNC', 'grade 2', '13800'],
  ['3/4-16 UNF', 'grade 2', '15400'],
  ['7/8-9 UNC', 'grade 2', '11400'],
];

/** Size, preload kN, nut factor k_m, torque N·m = 1.10·k_m·d·F_p,C. */
type EnRows = readonly (readonly [thread: string, preloadKn: number, nutFactor: number, torque: string])[];

// EN 1090-2, torque method, class 10.9 (secondary table, read).
export const EN_1090_TORQUES: EnRows = [
  ['M12', 59, 0.129, '100'],
  ['M16', 110, 0.129, '250'],
  ['M20', 172, 0.119, '450'],
  ['M22', 212, 0.127, '650'],
  ['M24', 247, 0.123, '800'],
  ['M27', 321, 0.131, '1250'],
  ['M30', 393, 0.127, '1650'],
  ['M36', 572, 0.124, '2800'],
];

/** Size, torque noncoated, torque coated, lbf·ft. */
type PccRows = readonly (readonly [thread: string, noncoated: number, coated: number])[];

// ASME PCC-1-2013, table 1: low alloy steel, 50 ksi on the root area, 8-pitch threads above 1 in (secondary, read). Adjusted by experience.
export const PCC_1_TORQUES: PccRows = [
  ['5/8-11 UNC', 120, 90],
  ['7/8-9 UNC', 350, 250],
  ['1 1/8-8 UN', 750, 550],
  ['1 1/4-8 UN', 1050, 800],
  ['1 3/8-8 UN', 1400, 1050],
  ['1 1/2-8 UN', 1800, 1400],
  ['1 5/8-8 UN', 2350, 1800],
  ['1 3/4-8 UN', 2950, 2300],
  ['2-8 UN', 4500, 3400],
];

/** Size, torque of tension nuts from and to, greatest allowed, lbf·in. */
type FaaRows = readonly (readonly [thread: string, from: number, to: number, greatest: number])[];

// FAA AC 43.13-1B, table 7-1, oil free, cadmium plated (read); 1-14 is no thread of the UNF series and is left out.
export const FAA_TORQUES: FaaRows = [
  ['#8-36 UNF', 12, 15, 20],
  ['1/4-28 UNF', 50, 70, 100],
  ['5/16-24 UNF', 100, 140, 225],
  ['3/8-24 UNF', 160, 190, 390],
  ['7/16-20 UNF', 450, 500, 840],
  ['1/2-20 UNF', 480, 690, 1100],
  ['5/8-18 UNF', 1100, 1300, 2400],
  ['3/4-16 UNF', 2300, 2500, 5000],
  ['7/8-14 UNF', 2500, 3000, 7000],
  ['1 1/8-12 UNF', 5000, 7000, 15000],
  ['#10-24 UNC', 20, 25, 35],
  ['1/4-20 UNC', 40, 50, 75],
  ['5/16-18 UNC', 80, 90, 160],
  ['3/8-16 UNC', 160, 185, 275],
  ['7/16-14 UNC', 235, 255, 475],
  ['1/2-13 UNC', 400, 480, 880],
  ['9/16-12 UNC', 500, 700, 1100],
  ['5/8-11 UNC', 700, 900, 1500],
  ['7/8-9 UNC', 2200, 3000, 4600],
];

/** Size, root area in², torque from and to, lbf·in. */
type NasaRows = readonly (readonly [thread: string, rootArea: string, from: number, to: number])[];

// NASA RP-1228 (Barrett, Fastener Design Manual, 1990), torques for class 8 bolts of 150 ksi, not lubricated, friction 0.12 and 0.14 (secondary table, read).
export const NASA_TORQUES_READ: NasaRows = [
  ['#10-24 UNC', '0.0145', 23, 34],
  ['#10-32 UNF', '0.0175', 29, 43],
  ['1/4-20 UNC', '0.0269', 54, 81],
];

// The same table, larger sizes, from memory; each area is π/4·(d − 1.299·P)² as in the rows that were read, each torque lies in their band.
export const NASA_TORQUES_RECALLED: NasaRows = [
  ['1/4-28 UNF', '0.0326', 68, 102],
  ['5/16-18 UNC', '0.0454', 117, 176],
  ['5/16-24 UNF', '0.0524', 139, 208],
  ['3/8-16 UNC', '0.0678', 205, 308],
  ['3/8-24 UNF', '0.0809', 230, 345],
  ['7/16-14 UNC', '0.0933', 26 * 12, 39 * 12],
  ['7/16-20 UNF', '0.1090', 31 * 12, 46 * 12],
  ['1/2-13 UNC', '0.1257', 42 * 12, 64 * 12],
  ['1/2-20 UNF', '0.1486', 52 * 12, 77 * 12],
  ['9/16-12 UNC', '0.162', 60 * 12, 90 * 12],
  ['5/8-11 UNC', '0.2018', 83 * 12, 125 * 12],
  ['3/4-10 UNC', '0.302', 144 * 12, 216 * 12],
];
