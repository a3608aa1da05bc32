/** Basic diameters as printed, mm: thread, d2, d1, d3 where it is given. */
type Diameters = readonly (readonly [thread: string, d2: string, d1: string, d3?: string])[];

// ISO 724:1993, basic dimensions; d3 as in ISO 898-1. From memory.
export const ISO_724_COARSE: Diameters = [
  ['M3', '2.675', '2.459', '2.387'],
  ['M3.5', '3.110', '2.850', '2.764'],
  ['M5', '4.480', '4.134', '4.019'],
  ['M6', '5.350', '4.917', '4.773'],
  ['M7', '6.350', '5.917', '5.773'],
  ['M10', '9.026', '8.376', '8.160'],
  ['M12', '10.863', '10.106', '9.853'],
  ['M14', '12.701', '11.835', '11.546'],
  ['M18', '16.376', '15.294', '14.933'],
  ['M20', '18.376', '17.294', '16.933'],
  ['M22', '20.376', '19.294', '18.933'],
  ['M24', '22.051', '20.752', '20.319'],
  ['M27', '25.051', '23.752', '23.319'],
  ['M30', '27.727', '26.211', '25.706'],
  ['M33', '30.727', '29.211', '28.706'],
  ['M36', '33.402', '31.670', '31.093'],
  ['M39', '36.402', '34.670', '34.093'],
  ['M42', '39.077', '37.129', '36.479'],
  ['M45', '42.077', '40.129', '39.479'],
  ['M48', '44.752', '42.587', '41.866'],
  ['M56', '52.428', '50.046', '49.252'],
  ['M60', '56.428', '54.046', '53.252'],
];

// Basic pitch and minor diameters beside the limits of taps, p. 795 of a catalogue (secondary table).
export const TAP_TABLE: Diameters = [
  ['M4.5', '4.013', '3.688'],
  ['M4.5x0.5', '4.175', '3.959'],
  ['M5x0.5', '4.675', '4.459'],
  ['M6', '5.350', '4.917'],
  ['M6x0.75', '5.513', '5.188'],
  ['M6x0.5', '5.675', '5.459'],
  ['M7', '6.350', '5.917'],
  ['M7x0.75', '6.513', '6.188'],
  ['M8', '7.188', '6.647'],
  ['M8x0.75', '7.513', '7.188'],
  ['M9x1', '8.350', '7.917'],
  ['M10', '9.026', '8.376'],
  ['M10x1.25', '9.188', '8.647'],
  ['M10x1', '9.350', '8.917'],
  ['M10x0.75', '9.513', '9.188'],
];

// ISO 724, fine pitches (secondary table). Several stress areas on that page are wrong and are not used; see STRESS_AREAS_FINE.
export const ISO_724_FINE: Diameters = [
  ['M8x1', '7.350', '6.917', '6.773'],
  ['M10x1.25', '9.188', '8.647', '8.466'],
  ['M12x1.5', '11.026', '10.376', '10.160'],
  ['M14x1.5', '13.026', '12.376', '12.160'],
  ['M18x1.5', '17.026', '16.376', '16.160'],
  ['M18x2', '16.701', '15.835', '15.546'],
  ['M20x1.5', '19.026', '18.376', '18.160'],
  ['M20x2', '18.701', '17.835', '17.546'],
  ['M20x1', '19.350', '18.917', '18.773'],
];

// Data page of the M8 thread (secondary table).
export const M8_PAGE: Diameters = [['M8', '7.188', '6.647', '6.466']];
export const M8_PAGE_STRESS_AREA = '36.61';

/** Stress areas as printed, mm²: thread, area. Three significant figures throughout. */
type Areas = readonly (readonly [thread: string, areaMm2: string])[];

// ISO 898-1, nominal stress areas beside the loads of coarse threads (secondary table).
export const STRESS_AREAS_COARSE: Areas = [
  ['M3', '5.03'],
  ['M3.5', '6.78'],
  ['M4', '8.78'],
  ['M5', '14.2'],
  ['M6', '20.1'],
  ['M7', '28.9'],
  ['M8', '36.6'],
  ['M10', '58.0'],
  ['M12', '84.3'],
  ['M14', '115'],
  ['M16', '157'],
  ['M18', '192'],
  ['M20', '245'],
  ['M22', '303'],
  ['M24', '353'],
  ['M27', '459'],
  ['M30', '561'],
  ['M33', '694'],
  ['M36', '817'],
  ['M39', '976'],
];

// ISO 724, coarse threads above M39 (secondary table).
export const STRESS_AREAS_LARGE: Areas = [
  ['M42', '1120'],
  ['M48', '1470'],
  ['M56', '2030'],
  ['M64', '2680'],
];

// ISO 724, fine pitches (secondary table); only the cells that the formula of ISO 898-1 bears out.
export const STRESS_AREAS_FINE: Areas = [
  ['M8x1', '39.2'],
  ['M10x1.25', '61.2'],
  ['M12x1.5', '88.1'],
  ['M14x1.5', '125'],
];

// ISO 898-1, stress areas. From memory.
export const STRESS_AREAS_REMEMBERED: Areas = [
  ['M45', '1310'],
  ['M52', '1760'],
  ['M60', '2360'],
  ['M18x1.5', '216'],
  ['M22x1.5', '333'],
  ['M24x2', '384'],
  ['M27x2', '496'],
  ['M33x2', '761'],
  ['M36x3', '865'],
  ['M39x3', '1030'],
];
