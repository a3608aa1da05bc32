export { convert, convertTorque } from './convert.ts';
export { formulaIn } from './formula-in.ts';
export { LANGUAGES, type Language } from './language.ts';
export { readNumber } from './read-number.ts';
export { readUnit } from './read-unit.ts';
export { type Digits, showNumber } from './show-number.ts';
export { showAngle, showShare, showTorque, showTorqueFigure } from './show-quantity.ts';
export { checkTorque, HAND_TORQUE, likelyUnit, readTorque, type TorqueRange } from './torque.ts';
export { isTorqueUnit, type Quantity, quantityOf, type TorqueUnit, UNITS, type Unit, unitsOf } from './unit.ts';
