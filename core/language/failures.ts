import type { Failure } from '../failure/failure.ts';
import type { Language } from '../quantity/language.ts';
import { say } from './say.ts';

/**
 * Says a failure as one message that ends with what to do next. The details come from where the failure was
 * found and are in English; the frame around them is in the language.
 */
export function sayFailure(failure: Failure, language: Language): string {
  switch (failure.kind) {
    case 'invalid':
      return say(language, 'failure.invalid', {
        field: failure.field,
        message: sentence(failure.message),
        expected: failure.expected,
      });
    case 'not-found':
      return say(language, 'failure.not-found', { what: failure.what, id: failure.id });
    case 'conflict':
      return say(language, 'failure.conflict', { message: sentence(failure.message) });
    case 'forbidden':
      return say(language, 'failure.forbidden', {
        action: failure.action,
        role: say(language, `role.${failure.needs}`),
      });
    case 'unavailable':
      return say(language, 'failure.unavailable', {
        message: sentence(failure.message),
        remedy: sentence(failure.remedy),
      });
  }
}

/** The same beside the field itself, which need not be named again. */
export const sayFailureAtField = (failure: Failure, language: Language): string =>
  failure.kind === 'invalid'
    ? say(language, 'failure.invalid-here', { message: sentence(failure.message), expected: failure.expected })
    : sayFailure(failure, language);

/** Messages are written with or without a full stop; a sentence has one. */
const sentence = (text: string): string => (/[.!?…]$/.test(text) ? text : `${text}.`);
