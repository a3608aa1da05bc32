import type { Asset } from '@clampwright/core/record';
import { demoId } from './identity.ts';

const asset = (name: string, location: string): Asset => ({ id: demoId(`asset ${name}`), name, location });

export const TOWER = asset('Tower 7', 'Kestrelhorn line, above the larch wood');
export const DRIVE = asset('Drive and tensioning unit', 'Kestrelhorn valley station');
export const SHEAVE_TRAIN = asset('Sheave train of tower 4', 'Kestrelhorn line');
export const VEHICLE = asset('Service vehicle', 'Kestrelhorn workshop yard');

export const DEMO_ASSETS: readonly Asset[] = [TOWER, DRIVE, SHEAVE_TRAIN, VEHICLE];
