import { XMLValidator } from 'fast-xml-parser';
import { describe, expect, it } from 'vitest';
import { aCertificate } from '../testing/a-certificate.ts';
import { readDcc } from './read-dcc.ts';
import { type DccFacts, writeDcc } from './write-dcc.ts';

const facts: DccFacts = {
  language: 'en',
  country: 'CH',
  laboratory: 'Kestrelhorn Ropeway, valley workshop',
  customer: 'Kestrelhorn Ropeway',
  software: { name: 'Clampwright', release: '0.1.0' },
};
const xml = writeDcc(aCertificate, facts);

/** Names of the children of an element, in their order. */
function childrenOf(name: string): readonly string[] {
  const [, inner = ''] = new RegExp(`<${name}[ >][^]*?>?\\n([^]*?)</${name}>`).exec(xml) ?? [];
  const indent = /^ */.exec(inner)?.[0] ?? '';
  return [...inner.matchAll(new RegExp(`^${indent}<([\\w:]+)`, 'gm'))].map(([, child = '']) => child);
}

describe('a digital certificate', () => {
  it('comes back as it was, names with signs of XML and all digits included', () => {
    const { calibration, wrench } = aCertificate;
    expect(readDcc(xml)).toEqual({ ok: true, value: { calibration, wrench } });
  });

  it('is well-formed, and the same each time', () => {
    expect(XMLValidator.validate(xml)).toBe(true);
    expect(writeDcc(aCertificate, facts)).toBe(xml);
  });

  // The order of the schema, read in version 3.2.1; the schema itself is not kept here.
  it.each([
    ['dcc:digitalCalibrationCertificate', ['dcc:administrativeData', 'dcc:measurementResults', 'dcc:document']],
    [
      'dcc:administrativeData',
      ['dcc:dccSoftware', 'dcc:coreData', 'dcc:items', 'dcc:calibrationLaboratory', 'dcc:respPersons', 'dcc:customer'],
    ],
    [
      'dcc:coreData',
      [
        'dcc:countryCodeISO3166_1',
        'dcc:usedLangCodeISO639_1',
        'dcc:mandatoryLangCodeISO639_1',
        'dcc:uniqueIdentifier',
        'dcc:identifications',
        'dcc:beginPerformanceDate',
        'dcc:endPerformanceDate',
        'dcc:performanceLocation',
      ],
    ],
    [
      'dcc:measurementResult',
      [
        'dcc:name',
        'dcc:usedMethods',
        'dcc:measuringEquipments',
        'dcc:influenceConditions',
        'dcc:results',
        'dcc:measurementMetaData',
      ],
    ],
  ])('%s holds its parts in the order of the schema', (name, children) => {
    expect(childrenOf(name)).toEqual(children);
  });

  it('tells figures in units of D-SI, as many uncertainties as values', () => {
    for (const [, list = ''] of xml.matchAll(/<si:realListXMLList>([^]*?)<\/si:realListXMLList>/g)) {
      const count = (tag: string) => new RegExp(`<si:${tag}>([^<]*)<`).exec(list)?.[1]?.split(' ').length;
      expect(list).toMatch(/<si:unitXMLList>\\(newton\\metre|percent|degreecelsius)</);
      expect(count('valueExpandedMUXMLList') ?? count('valueXMLList')).toBe(count('valueXMLList'));
    }
    expect(xml).toContain('<dcc:conformity>pass</dcc:conformity>');
  });

  it('is refused when a reading was changed, or when it is none', () => {
    const first = aCertificate.calibration.asFound.points[0]!.referenceNm.map(String).join(' ');
    expect(xml).toContain(first);
    expect(readDcc(xml.replace(first, first.replace(/\d /, '9 ')))).toMatchObject({
      failure: { field: 'dcc:results' },
    });
    expect(readDcc('<a>')).toMatchObject({ ok: false, failure: { field: 'file' } });
    expect(readDcc('<a/>')).toMatchObject({ ok: false });
    const torn = xml.replace(/<dcc:dataBase64>[^<]{40}/, '<dcc:dataBase64>');
    expect(readDcc(torn)).toMatchObject({ ok: false });
  });
});
