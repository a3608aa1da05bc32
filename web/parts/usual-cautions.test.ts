import { sayCautions } from '@clampwright/core/language';
import { expect, it } from 'vitest';
import de from '../words/technician.de.json' with { type: 'json' };
import en from '../words/technician.en.json' with { type: 'json' };
import es from '../words/technician.es.json' with { type: 'json' };
import fr from '../words/technician.fr.json' with { type: 'json' };

it.each([
  ['en', en],
  ['de', de],
  ['fr', fr],
  ['es', es],
] as const)('the usual cautions on screen are those of the record in %s', (language, words) => {
  expect(Object.values(words.caution.usual)).toEqual(sayCautions(language));
});
