/** What a column may be, by the usual words over it; `none`: of no use here, such as a verdict or a limit. */
export type Role =
  | 'curveBy'
  | 'position'
  | 'torque'
  | 'angle'
  | 'time'
  | 'joint'
  | 'stage'
  | 'round'
  | 'wrenchSerial'
  | 'none';

interface RoleWords {
  readonly role: Role;
  /** Beginnings or endings of words, without accents; English, German, French, Spanish. */
  readonly parts: readonly string[];
  /** Whole words only: too short to stand within another. */
  readonly whole: readonly string[];
}

/** The first row that matches decides, so that `torque limit` is a limit and `bolt torque` a torque. */
export const ROLE_WORDS: readonly RoleWords[] = [
  {
    role: 'none',
    parts: [
      'verdict',
      'result',
      'ergebnis',
      'bewertung',
      'status',
      'evaluation',
      'estado',
      'limit',
      'grenz',
      'target',
      'nominal',
      'tolera',
      'unit',
      'einheit',
      'unidad',
      'consigne',
      'objetivo',
    ],
    whole: ['ok', 'nok', 'io', 'nio', 'soll', 'min', 'max', 'lower', 'upper'],
  },
  { role: 'curveBy', parts: ['curve', 'kurve', 'courbe', 'curva'], whole: ['run', 'verlauf'] },
  { role: 'torque', parts: ['torque', 'moment', 'couple', 'apriete'], whole: ['par', 'md', 'nm'] },
  { role: 'angle', parts: ['angle', 'winkel', 'angulo'], whole: ['giro', 'deg'] },
  { role: 'time', parts: ['time', 'zeit', 'datum', 'horodat', 'fecha'], whole: ['date', 'heure', 'hora', 't'] },
  { role: 'wrenchSerial', parts: ['wrench', 'schlussel', 'serial', 'seriennummer', 'llave'], whole: ['cle', 'serie'] },
  {
    role: 'joint',
    parts: ['joint', 'verbindung', 'assemblage', 'junta'],
    whole: ['union', 'flange', 'flansch', 'bride', 'brida'],
  },
  { role: 'stage', parts: ['stage', 'stufe', 'etape', 'etapa'], whole: [] },
  { role: 'round', parts: ['round', 'runde', 'durchgang', 'pasada', 'ronda'], whole: ['passe'] },
  {
    role: 'position',
    parts: ['position', 'posicion', 'bolt', 'bolzen', 'schraube', 'boulon', 'tornillo', 'perno', 'fastener'],
    whole: ['pos', 'nr', 'no', 'n', 'num', 'numero', 'number', 'vis'],
  },
];

/** The words of a column's name: small letters, accents off, what stands in brackets off. */
function wordsOf(name: string): readonly string[] {
  const plain = name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/\(.*?\)|\[.*?\]/g, ' ');
  return plain
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== '');
}

/** What a column is, by its name. */
export function roleOf(name: string): Role | undefined {
  const words = wordsOf(name);
  const matches = ({ parts, whole }: RoleWords) =>
    words.some((word) => whole.includes(word) || parts.some((part) => word.startsWith(part) || word.endsWith(part)));
  return ROLE_WORDS.find(matches)?.role;
}
