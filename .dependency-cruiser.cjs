/** The arrows of ARCHITECTURE.md: each workspace and what it may import. */
const MAY_IMPORT = {
  core: [],
  store: ['core'],
  intake: ['core'],
  report: ['core'],
  demo: ['core', 'intake'],
  server: ['core', 'store', 'intake', 'report'],
  cli: ['core', 'store', 'intake', 'report', 'server', 'demo'],
  web: ['core', 'server/api'],
  validation: ['core'],
  bench: ['core', 'store', 'intake', 'report', 'server', 'demo'],
};
const WORKSPACES = Object.keys(MAY_IMPORT);
const isTest = '\\.test\\.tsx?$';

const arrows = WORKSPACES.map((workspace) => ({
  name: `arrow-${workspace}`,
  comment: `${workspace} may import ${MAY_IMPORT[workspace].join(', ') || 'nothing else'} of this house`,
  severity: 'error',
  from: { path: `^${workspace}/`, pathNot: isTest },
  to: {
    path: `^(${WORKSPACES.join('|')})/`,
    pathNot: [workspace, ...MAY_IMPORT[workspace]].map((allowed) => `^${allowed}/`),
  },
}));

module.exports = {
  forbidden: [
    ...arrows,
    {
      name: 'no-circles',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'core-is-pure',
      comment: 'core has the ECMAScript library alone: no Node, no DOM, and only these packages',
      severity: 'error',
      from: { path: '^core/', pathNot: isTest },
      to: { pathNot: ['^core/', 'node_modules/zod/', 'node_modules/@noble/'] },
    },
    {
      name: 'core-files-not-faces',
      comment: 'inside core a file imports the file it needs, never a face',
      severity: 'error',
      from: { path: '^core/', pathNot: isTest },
      to: { path: '^core/[^/]+/index\\.ts$' },
    },
    {
      name: 'web-takes-types-of-the-api',
      severity: 'error',
      from: { path: '^web/', pathNot: isTest },
      to: { path: '^server/', dependencyTypesNot: ['type-only'] },
    },
    { name: 'no-lost-import', severity: 'error', from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)dist/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.base.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['clampwright-source', 'import', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.js', '.json', '.css', '.d.ts'],
    },
  },
};
