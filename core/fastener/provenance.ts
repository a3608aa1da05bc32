/** How a figure of a table was had: seen in a copy of its source, a rule of the trade, or remembered. */
export type Provenance = 'read' | 'common practice' | 'from memory';
