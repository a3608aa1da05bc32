import type { LubricationState } from './lubrication.ts';

/** Words, also inside of longer ones, that a lead writes of a dry fastener; English, German, French, Spanish. */
const DRY = /\b(?:dry|none|without|no lubricant|trocken|ohne|kein|sec|sans|aucun|seco|sin|ning[uú]n)/i;
/** And of a lubricated one. */
const LUBRICATED =
  /oil|grease|\bwax|paste|lubric|molyb|mos ?[2₂]|graphit|ptfe|öl|fett|wachs|schmier|huile|graiss|cire|pâte|aceite|grasa|cera|pasta/i;

/**
 * What a joint's text on the lubricant says; what cannot be told stays unknown.
 *
 * @param text as a lead writes it, in any of our languages
 */
export function readLubricant(text: string): LubricationState {
  if (DRY.test(text)) return 'dry';
  return LUBRICATED.test(text) ? 'lubricated' : 'unknown';
}
