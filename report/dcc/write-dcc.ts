import { type Certified, canonical } from '@clampwright/core/record';
import { XMLBuilder } from 'fast-xml-parser';
import { content, type Element, quantity, realList } from './element.ts';
import { resultsOf } from './results.ts';

/** What a digital certificate must name besides the calibration itself. */
export interface DccFacts {
  readonly language: 'en' | 'de' | 'fr' | 'es';
  /** ISO 3166-1, two letters, of where it was calibrated. */
  readonly country: string;
  readonly laboratory: string;
  readonly customer: string;
  readonly software: { readonly name: string; readonly release: string };
}

export const DCC_VERSION = '3.3.0';

/** Names of the file inside the certificate that carries the calibration as it is kept here. */
export const ENCLOSED = { fileName: 'calibration.json', mimeType: 'application/json' } as const;

/**
 * A calibration as Digital Calibration Certificate: XML with SI units that machines read.
 *
 * @source DCC schema of the Physikalisch-Technische Bundesanstalt: every part used was read in version 3.2.1, its figures
 * in D-SI 2.2; that 3.3.0 orders them alike is from memory; ISO/IEC 17025:2017, 7.8
 */
export function writeDcc(certified: Certified, facts: DccFacts): string {
  const builder = new XMLBuilder({
    ignoreAttributes: false,
    attributeNamePrefix: '@',
    format: true,
    suppressEmptyNode: true,
  });
  return `<?xml version="1.0" encoding="UTF-8"?>\n${builder.build({ 'dcc:digitalCalibrationCertificate': root(certified, facts) })}`;
}

const root = (certified: Certified, facts: DccFacts): Element => ({
  '@schemaVersion': DCC_VERSION,
  '@xmlns:dcc': 'https://ptb.de/dcc',
  '@xmlns:si': 'https://ptb.de/si',
  '@xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
  '@xsi:schemaLocation': `https://ptb.de/dcc https://ptb.de/dcc/v${DCC_VERSION}/dcc.xsd`,
  'dcc:administrativeData': administrative(certified, facts),
  'dcc:measurementResults': { 'dcc:measurementResult': measurement(certified, facts) },
  'dcc:document': {
    'dcc:fileName': ENCLOSED.fileName,
    'dcc:mimeType': ENCLOSED.mimeType,
    'dcc:dataBase64': Buffer.from(
      canonical({ calibration: certified.calibration, wrench: certified.wrench }),
      'utf8',
    ).toString('base64'),
  },
});

function administrative({ calibration, wrench }: Certified, facts: DccFacts): Element {
  const { language, country, laboratory, customer, software } = facts;
  const contact = (name: string) => ({
    'dcc:name': content(name, language),
    'dcc:location': { 'dcc:countryCode': country },
  });
  return {
    'dcc:dccSoftware': {
      'dcc:software': { 'dcc:name': content(software.name, language), 'dcc:release': software.release },
    },
    'dcc:coreData': {
      'dcc:countryCodeISO3166_1': country,
      'dcc:usedLangCodeISO639_1': language,
      'dcc:mandatoryLangCodeISO639_1': language,
      'dcc:uniqueIdentifier': calibration.id,
      'dcc:identifications': { 'dcc:identification': identification('calibrationLaboratory', calibration.certificate) },
      'dcc:beginPerformanceDate': calibration.calibratedOn,
      'dcc:endPerformanceDate': calibration.calibratedOn,
      'dcc:performanceLocation': 'laboratory',
    },
    'dcc:items': {
      'dcc:item': {
        'dcc:name': content(wrench.name, language),
        'dcc:model': `ISO 6789-1 type ${wrench.type} class ${wrench.class}`,
        'dcc:identifications': {
          'dcc:identification': [identification('manufacturer', wrench.serial), identification('owner', wrench.id)],
        },
      },
    },
    'dcc:calibrationLaboratory': { 'dcc:contact': contact(laboratory) },
    'dcc:respPersons': {
      'dcc:respPerson': { 'dcc:person': { 'dcc:name': content(calibration.by, language) }, 'dcc:mainSigner': true },
    },
    'dcc:customer': contact(customer),
  };
}

const identification = (issuer: 'manufacturer' | 'owner' | 'calibrationLaboratory', value: string): Element => ({
  'dcc:issuer': issuer,
  'dcc:value': value,
});

function measurement(certified: Certified, { language }: DccFacts): Element {
  const { reference } = certified.calibration;
  const standing = certified.left ?? certified.found;
  const conforms = standing.every(({ evaluated }) => evaluated.conforms);
  return {
    'dcc:name': content('ISO 6789', language),
    'dcc:usedMethods': {
      'dcc:usedMethod': {
        'dcc:name': content('ISO 6789-2:2017', language),
        'dcc:norm': ['ISO 6789-1:2017', 'ISO 6789-2:2017'],
      },
    },
    'dcc:measuringEquipments': {
      'dcc:measuringEquipment': {
        'dcc:name': content(reference.name, language),
        'dcc:identifications': {
          'dcc:identification': [
            identification('manufacturer', reference.serial),
            identification('calibrationLaboratory', reference.certificate),
          ],
        },
      },
    },
    ...influences(certified, language),
    'dcc:results': resultsOf(certified, language),
    'dcc:measurementMetaData': { 'dcc:metaData': { 'dcc:conformity': conforms ? 'pass' : 'fail' } },
  };
}

function influences({ calibration }: Certified, language: DccFacts['language']): { readonly [name: string]: Element } {
  const { temperatureC, humidityPercent } = calibration;
  const one = (refType: string, name: string, value: number, unit: string): Element => ({
    '@refType': refType,
    'dcc:name': content(name, language),
    'dcc:data': { 'dcc:quantity': quantity(refType, name, language, realList([value], unit)) },
  });
  const told = [
    ...(temperatureC === undefined
      ? []
      : [one('basic_temperature', 'Temperature', temperatureC, String.raw`\degreecelsius`)]),
    ...(humidityPercent === undefined
      ? []
      : [one('basic_humidityRelative', 'Relative humidity', humidityPercent, String.raw`\percent`)]),
  ];
  return told.length === 0 ? {} : { 'dcc:influenceConditions': { 'dcc:influenceCondition': told } };
}
