import { invalid, ok, type Result } from '../failure/failure.ts';
import { MATERIALS, type MaterialRow } from './materials.ts';

/**
 * A material of the table by its name.
 *
 * @param text  such as `carbon steel`, whatever its capitals
 * @param field named in the refusal, which tells the materials that are known
 */
export function readMaterial(text: string, field = 'material'): Result<MaterialRow> {
  const name = text.trim().toLowerCase();
  const found = MATERIALS.find((row) => row.name.toLowerCase() === name);
  if (found !== undefined) return ok(found);
  const known = MATERIALS.map((row) => row.name).join(', ');
  return invalid(field, `“${text.trim()}” is no material known here.`, `one of ${known}; or give its modulus`);
}
