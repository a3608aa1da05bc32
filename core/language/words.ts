import type { Role } from '../failure/failure.ts';
import type { StageKind } from '../procedure/procedure.ts';
import type { Language } from '../quantity/language.ts';
import type { Need } from '../record/state.ts';
import type { Verdict } from '../verdict/verdict.ts';
import { say } from './say.ts';

/** The word for a verdict, lower case; `none` while there is no standing pull, `accepted` by the lead's word. */
export const sayVerdict = (verdict: Verdict | 'none' | 'accepted', language: Language): string =>
  say(language, `verdict.${verdict}`);

/** What a position waits for. */
export const sayNeed = (need: Need, language: Language): string => say(language, `need.${need}`);

export const sayStage = (kind: StageKind, language: Language): string => say(language, `stage.${kind}`);

export const sayRole = (role: Role, language: Language): string => say(language, `role.${role}`);

/** The standing cautions, in the order in which they are given. */
export const sayCautions = (language: Language): readonly string[] => CAUTIONS.map((caution) => say(language, caution));

const CAUTIONS = [
  'caution.maker-first',
  'caution.licensed',
  'caution.estimates',
  'caution.relieve-first',
  'caution.eyes-hands',
  'caution.no-cheater',
  'caution.not-for-loosening',
] as const;
