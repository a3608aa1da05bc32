/* Where each text of the shipped tables stands in the catalogues; a row without a key fails its test. */

const SURFACES = {
  steel: 'steel',
  electroplated: 'electroplated',
  'zinc flake': 'zinc-flake',
  'hot-dip galvanized': 'galvanized',
  'organic coating': 'organic',
  'austenitic steel': 'austenitic',
  'aluminium or magnesium alloy': 'light-alloy',
  any: 'any',
} as const;

const LUBRICANTS = {
  'solid lubricant (MoS2, graphite, PTFE) in lacquer or paste': 'solid-in-paste',
  wax: 'wax',
  grease: 'grease',
  oil: 'oil',
  'as delivered, lightly oiled': 'as-delivered',
  none: 'none',
  'solid lubricant or wax, also in the top coat': 'solid-or-wax',
  'MoS2, graphite or wax': 'solid-graphite-wax',
  'solid lubricant or wax in the coating': 'in-the-coating',
  'solid lubricant, wax or paste': 'solid-wax-paste',
  'solid lubricant, wax, grease or oil': 'any-lubricant',
  'thread adhesive': 'adhesive',
} as const;

const METHODS = {
  'torque wrench, torque found by tests on the joint': 'tested',
  'torque wrench, friction estimated as class B': 'estimated-b',
  'torque wrench, friction estimated as class A': 'estimated-a',
} as const;

const keyIn =
  <Key extends string>(keys: Readonly<Record<string, Key>>) =>
  (text: string): Key => {
    const key = keys[text];
    if (key === undefined) throw new Error(`no words for “${text}”`);
    return key;
  };

export const surfaceKey = keyIn(SURFACES);
export const lubricantKey = keyIn(LUBRICANTS);
export const methodKey = keyIn(METHODS);
