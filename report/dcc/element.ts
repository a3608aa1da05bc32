/** A value under an element's name: text, an attribute (`@name`), nested elements, or a list of any. */
export type Element = string | number | boolean | undefined | readonly Element[] | { readonly [name: string]: Element };

/** Text in the language of the certificate, as the schema wants it. */
export const content = (text: string, language: string): Element => ({
  'dcc:content': { '@lang': language, '#text': text },
});

interface RealList {
  readonly 'si:realListXMLList': Element;
}

/** A list of figures in a unit of D-SI, each with its expanded uncertainty where one is told. */
export function realList(values: readonly number[], unit: string, expanded?: readonly number[]): RealList {
  return {
    'si:realListXMLList': {
      'si:valueXMLList': values.map(String).join(' '),
      'si:unitXMLList': unit,
      ...(expanded
        ? {
            'si:measurementUncertaintyUnivariateXMLList': {
              'si:expandedMUXMLList': {
                'si:valueExpandedMUXMLList': expanded.map(String).join(' '),
                'si:coverageFactorXMLList': '2',
                'si:coverageProbabilityXMLList': '0.95',
                'si:distributionXMLList': 'normal',
              },
            },
          }
        : {}),
    },
  };
}

/** One quantity with its name; `refType` tells machines what it is. */
export const quantity = (refType: string, name: string, language: string, data: RealList): Element => ({
  '@refType': refType,
  'dcc:name': content(name, language),
  ...data,
});

// BIPM SI brochure in the notation of D-SI
export const NEWTON_METRE = String.raw`\newton\metre`;
export const PERCENT = String.raw`\percent`;
