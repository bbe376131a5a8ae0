/**
 * The arrows of DEVELOPERS.md, “Folders and arrows”: what each folder may import of ours besides itself, types included,
 * and no circles. A folder of src/ that is missing here may import nothing and be imported by nothing.
 */
const beforePrice = ['src/plan', 'src/season', 'src/inventory', 'src/formulas', 'shared']
const described = ['src/sheets', 'src/drawing', 'src/details', 'src/jobs', 'src/price', ...beforePrice]

const arrows = {
  shared: [],
  'src/formulas': ['shared'],
  'src/inventory': ['src/formulas', 'shared'],
  'src/season': ['src/inventory', 'shared'],
  'src/plan': ['src/season', 'src/inventory', 'src/formulas', 'shared'],
  'src/price': ['src/plan', 'src/formulas', 'shared'],
  'src/jobs': ['src/price', 'src/plan', 'src/inventory', 'shared'],
  'src/details': ['shared'],
  'src/drawing': beforePrice,
  'src/sheets': ['src/drawing', 'src/details', 'src/jobs', 'src/price', ...beforePrice],
  'src/excel': described,
  'src/file': described,
  'src/workbench': ['src/file', 'tools', ...described],
  functions: ['src/plan', 'src/inventory', 'src/formulas', 'shared'],
  taskpane: ['src/excel', ...described]
}

/** The start of a path in one of these folders. */
const within = (folders) => `^(${folders.join('|')})/`
const ours = within(['shared', 'src', 'functions', 'taskpane', 'tests', 'tools', 'bench'])

module.exports = {
  forbidden: [
    {
      name: 'no circles',
      comment: 'Two files that need each other belong in one, or what both need belongs in a third.',
      severity: 'error',
      from: {},
      to: { circular: true }
    },
    {
      name: 'a new folder needs its arrows',
      severity: 'error',
      from: { path: '^src/', pathNot: within(Object.keys(arrows)) },
      to: { path: ours }
    },
    {
      name: 'no import leads nowhere',
      severity: 'error',
      from: {},
      to: { path: '^\\.', couldNotResolve: true }
    },
    ...Object.entries(arrows).map(([folder, allowed]) => ({
      name: `arrows of ${folder}`,
      comment: `${folder} may import ${allowed.join(', ') || 'nothing of ours'}.`,
      severity: 'error',
      from: { path: within([folder]) },
      to: { path: ours, pathNot: within([folder, ...allowed]) }
    }))
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' }
  }
}
