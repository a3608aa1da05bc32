/** Strength as printed: class or grade, a thread inside its range of sizes, proof, yield and tensile stress. */
type Strengths = readonly (readonly [name: string, thread: string, proof: string, yieldStress: string, tensile: string])[];

// ISO 898-1, minimum values, MPa, in a chart of grades and classes (secondary table).
export const CLASSES_READ: Strengths = [
  ['4.6', 'M10', '225', '240', '400'],
  ['5.8', 'M10', '380', '420', '520'],
  ['8.8', 'M16', '580', '640', '800'],
  ['8.8', 'M18', '600', '660', '830'],
  ['9.8', 'M16', '650', '720', '900'],
  ['10.9', 'M10', '830', '940', '1040'],
  ['12.9', 'M10', '970', '1100', '1220'],
];

// ISO 898-1, minimum values, MPa. From memory.
export const CLASSES_REMEMBERED: Strengths = [
  ['4.8', 'M10', '310', '340', '420'],
  ['5.6', 'M10', '280', '300', '500'],
  ['6.8', 'M10', '440', '480', '600'],
];

// SAE J429, ksi: Shigley and Mischke, 5th ed., pp. 341 and 348, as quoted in a secondary table. Ends of each range of sizes.
export const GRADES: Strengths = [
  ['SAE J429 grade 2', '1/4-20 UNC', '55', '57', '74'],
  ['SAE J429 grade 2', '3/4-10 UNC', '55', '57', '74'],
  ['SAE J429 grade 2', '7/8-9 UNC', '33', '36', '60'],
  ['SAE J429 grade 2', '1 1/2-6 UNC', '33', '36', '60'],
  ['SAE J429 grade 5', '1/4-20 UNC', '85', '92', '120'],
  ['SAE J429 grade 5', '1-8 UNC', '85', '92', '120'],
  ['SAE J429 grade 5', '1 1/8-7 UNC', '74', '81', '105'],
  ['SAE J429 grade 5', '1 1/2-6 UNC', '74', '81', '105'],
  ['SAE J429 grade 8', '1/4-20 UNC', '120', '130', '150'],
  ['SAE J429 grade 8', '1 1/2-6 UNC', '120', '130', '150'],
];

// SAE J429, ksi: the grades that are seldom met. From memory.
export const GRADES_REMEMBERED: Strengths = [
  ['SAE J429 grade 1', '1/4-20 UNC', '33', '36', '60'],
  ['SAE J429 grade 1', '1 1/2-6 UNC', '33', '36', '60'],
  ['SAE J429 grade 4', '3/4-10 UNC', '65', '100', '115'],
  ['SAE J429 grade 5.2', '1-8 UNC', '85', '92', '120'],
  ['SAE J429 grade 7', '1 1/2-6 UNC', '105', '115', '133'],
  ['SAE J429 grade 8.2', '1-8 UNC', '120', '130', '150'],
];
