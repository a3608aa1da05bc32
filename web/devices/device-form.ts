import { type Device, deviceSchema, type WayIn } from '@clampwright/core/device';
import { parse } from '@clampwright/core/failure';
import type { Language } from '@clampwright/core/quantity';
import { type Reader, readerIn } from '../forms/reader.ts';
import { type FormReading, reading } from '../wrenches/form/wrench-form.ts';

export const WAYS = ['serial', 'opc-ua', 'http', 'folder'] as const satisfies readonly WayIn['kind'][];

/** Security as it is offered: mode and policy together. */
export const SECURITIES = [
  'SignAndEncrypt Basic256Sha256',
  'SignAndEncrypt Aes256_Sha256_RsaPss',
  'SignAndEncrypt Aes128_Sha256_RsaOaep',
  'Sign Basic256Sha256',
  'None None',
] as const;

export interface DeviceForm {
  readonly name: string;
  readonly wrenchId: string;
  readonly kind: WayIn['kind'];
  readonly path: string;
  readonly baudRate: string;
  readonly lines: string;
  readonly endpointUrl: string;
  readonly security: (typeof SECURITIES)[number];
  readonly userName: string;
  readonly password: string;
  readonly trustedCertificate: string;
  readonly folder: string;
  readonly mapping: string;
}

export const BLANK_DEVICE: DeviceForm = {
  name: '',
  wrenchId: '',
  kind: 'serial',
  path: '',
  baudRate: '115200',
  lines: 'Clampwright',
  endpointUrl: '',
  security: 'SignAndEncrypt Basic256Sha256',
  userName: '',
  password: '',
  trustedCertificate: '',
  folder: '',
  mapping: '',
};

/** A device as the form shows it; its password is known to the server alone. */
export function formOf({ name, wrenchId = '', way }: Device): DeviceForm {
  const form = { ...BLANK_DEVICE, name, wrenchId, kind: way.kind };
  switch (way.kind) {
    case 'serial':
      return { ...form, path: way.path, baudRate: String(way.baudRate), lines: way.lines };
    case 'opc-ua': {
      const wanted = `${way.securityMode} ${way.securityPolicy}`;
      const { endpointUrl, userName = '', trustedCertificate = '' } = way;
      const security = SECURITIES.find((one) => one === wanted) ?? BLANK_DEVICE.security;
      return { ...form, endpointUrl, security, userName, trustedCertificate };
    }
    case 'http':
      return form;
    case 'folder':
      return { ...form, folder: way.path, mapping: way.mapping };
  }
}

/** The device that stands in the form. */
export function readDevice(form: DeviceForm, id: string, language: Language): FormReading<Device> {
  const reader = readerIn(language);
  const name = reader.text('name', form.name);
  if (form.kind === 'folder') reader.text('wrenchId', form.wrenchId);
  const way = readWay(form, reader);
  const written = { id, name, way, ...(form.wrenchId === '' ? {} : { wrenchId: form.wrenchId }) };
  const device = reader.faults.length === 0 ? reader.take('', parse(deviceSchema, written)) : undefined;
  return reading(device, reader);
}

function readWay(form: DeviceForm, reader: Reader): unknown {
  const { kind } = form;
  switch (kind) {
    case 'serial': {
      const baudRate = reader.number('way.baudRate', form.baudRate, { isWhole: true, from: 300, to: 4_000_000 });
      return { kind, path: reader.text('way.path', form.path), baudRate, lines: form.lines };
    }
    case 'opc-ua': {
      const [securityMode, securityPolicy] = form.security.split(' ');
      const { userName, password, trustedCertificate } = form;
      const endpointUrl = reader.text('way.endpointUrl', form.endpointUrl);
      return {
        kind,
        endpointUrl,
        securityMode,
        securityPolicy,
        ...(userName.trim() === '' ? {} : { userName: userName.trim() }),
        ...(password === '' ? {} : { password }),
        ...(trustedCertificate === '' ? {} : { trustedCertificate }),
      };
    }
    case 'http':
      return { kind };
    case 'folder':
      return { kind, path: reader.text('way.folder', form.folder), mapping: reader.text('way.mapping', form.mapping) };
  }
}
