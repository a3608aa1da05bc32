import { invalid, parse, type Result } from '@clampwright/core/failure';
import { type Calibration, calibrationSchema, type Wrench, wrenchSchema } from '@clampwright/core/wrench';
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { z } from 'zod';
import { READING } from './results.ts';
import { ENCLOSED } from './write-dcc.ts';

const enclosedSchema = z.strictObject({ calibration: calibrationSchema, wrench: wrenchSchema });

const quantitySchema = z.looseObject({
  '@refType': z.string().optional(),
  'si:realListXMLList': z.looseObject({ 'si:valueXMLList': z.string() }).optional(),
});

const certificateSchema = z.looseObject({
  'dcc:digitalCalibrationCertificate': z.looseObject({
    'dcc:measurementResults': z.looseObject({
      'dcc:measurementResult': z.looseObject({
        'dcc:results': z.looseObject({
          'dcc:result': z.array(
            z.looseObject({
              'dcc:data': z.looseObject({ 'dcc:list': z.looseObject({ 'dcc:quantity': z.array(quantitySchema) }) }),
            }),
          ),
        }),
      }),
    }),
    'dcc:document': z.looseObject({
      'dcc:fileName': z.literal(ENCLOSED.fileName),
      'dcc:dataBase64': z.base64(),
    }),
  }),
});

const LISTS = new Set(['dcc:result', 'dcc:quantity']);

/**
 * Reads a Digital Calibration Certificate that was written here, without loss.
 *
 * @returns refused where it is no such XML, or where its readings are others than those that it encloses
 */
export function readDcc(xml: string): Result<{ readonly calibration: Calibration; readonly wrench: Wrench }> {
  const wellFormed = XMLValidator.validate(xml);
  if (wellFormed !== true)
    return invalid('file', `line ${wellFormed.err.line}: ${wellFormed.err.msg}`, 'well-formed XML');
  const parser = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: '@',
    parseTagValue: false,
    processEntities: true,
    isArray: (name) => LISTS.has(name),
  });
  const read = parse(certificateSchema, parser.parse(xml));
  if (!read.ok) return read;
  const certificate = read.value['dcc:digitalCalibrationCertificate'];
  const enclosed = enclosedIn(certificate['dcc:document']['dcc:dataBase64']);
  if (!enclosed.ok) return enclosed;
  const told = certificate['dcc:measurementResults']['dcc:measurementResult']['dcc:results']['dcc:result']
    .flatMap((result) => result['dcc:data']['dcc:list']['dcc:quantity'])
    .filter((quantity) => quantity['@refType'] === READING)
    .map((quantity) => quantity['si:realListXMLList']?.['si:valueXMLList'] ?? '');
  const kept = readingsOf(enclosed.value.calibration);
  if (told.toSorted().join('|') !== kept.toSorted().join('|'))
    return invalid(
      'dcc:results',
      'its readings are not those of the enclosed calibration',
      'a certificate as it was written',
    );
  return enclosed;
}

function enclosedIn(base64: string): Result<z.infer<typeof enclosedSchema>> {
  try {
    const data: unknown = JSON.parse(Buffer.from(base64, 'base64').toString('utf8'));
    return parse(enclosedSchema, data);
  } catch (error) {
    return invalid('dcc:document', error instanceof Error ? error.message : 'unreadable', ENCLOSED.mimeType);
  }
}

const readingsOf = ({ asFound, asLeft }: Calibration): readonly string[] =>
  [...asFound.points, ...(asLeft?.points ?? [])].map(({ referenceNm }) => referenceNm.map(String).join(' '));
