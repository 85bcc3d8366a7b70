/**
 * Which room may import which: app > views > charts, ui > state > jobs > project > units > physics, and
 * terminal beside the app on top of project, units and physics. Every arrow that is not listed is an error.
 * tests/house/importDirection.test.ts plants a bad import for each.
 */

/** Own rooms that a room may import; its own files are always open to it. */
const mayImport = {
  physics: [],
  units: ['physics'],
  project: ['units', 'physics'],
  jobs: ['project', 'units', 'physics'],
  state: ['jobs', 'project', 'units', 'physics'],
  charts: ['state', 'jobs', 'project', 'units', 'physics'],
  ui: ['state', 'jobs', 'project', 'units', 'physics'],
  views: ['charts', 'ui', 'state', 'jobs', 'project', 'units', 'physics'],
  app: ['views', 'charts', 'ui', 'state', 'jobs', 'project', 'units', 'physics'],
  terminal: ['project', 'units', 'physics'],
};

/** Packages that a room may import, as a regular expression of the whole name; `/sub` entries are included. */
const mayUsePackages = {
  physics: '(?!)',
  units: '(?!)',
  project: 'zod|papaparse',
  jobs: '(?!)',
  state: 'react|zustand|zundo|zod|idb-keyval',
  charts: 'react|d3',
  ui: 'react|react-dom',
  views: 'react|react-dom',
  app: 'react|react-dom|zustand|@fontsource-variable/.*',
  terminal: 'node:.*',
};

/** Rooms that may load the demo project. */
const opensDemo = ['app', 'state', 'views'];

const rooms = Object.keys(mayImport);

/** Climbs out of the importing file's folder and enters one of the named rooms. */
function climbsInto(roomNames) {
  return `^(?:\\.{1,2}/)*\\.\\./(?:src/)?(?:${roomNames.join('|')})(?:/|$)`;
}

function patternsOf(room) {
  const closedRooms = rooms.filter((other) => other !== room && !mayImport[room].includes(other));
  return [
    {
      regex: climbsInto(closedRooms),
      message: `src/${room} may import ${mayImport[room].join(', ') || 'no other room'}.`,
    },
    {
      regex: `^(?!\\.{1,2}(?:/|$))(?!(?:${mayUsePackages[room]})(?:/|$))`,
      message: `src/${room} may not import this package.`,
    },
    {
      regex: climbsInto([
        'tests',
        'docs',
        'dist',
        'node_modules',
        ...(opensDemo.includes(room) ? [] : ['demo-data']),
      ]),
      message: 'Only src may be imported from src, and demo-data by the rooms that open it.',
    },
    {
      regex: '[^./][^/]*/\\.\\.(?:/|$)',
      message: 'A path that goes down and up again hides where it leads.',
    },
  ];
}

/** From a file `depth` folders below src/views, that many steps up and into another view. */
function sidewaysPattern(depth) {
  return {
    regex: `^(?:\\./)?(?:\\.\\./){${depth}}(?!\\.\\.?(?:/|$))|^(?:\\.{1,2}/)+(?:src/)?views(?:/|$)`,
    message: 'A view may not import another view: move what both need to ui, charts or state.',
  };
}

function importRule(patterns) {
  return { 'no-restricted-imports': ['error', { patterns }] };
}

/** Only the app loads code lazily; elsewhere an `import()` would slip past the rule above. */
const noLazyImports = {
  'no-restricted-syntax': [
    'error',
    { selector: 'ImportExpression', message: 'Only src/app loads code lazily.' },
  ],
};

const roomRules = rooms.map((room) => ({
  files: [`src/${room}/**/*.{ts,tsx}`],
  rules: { ...importRule(patternsOf(room)), ...(room === 'app' ? {} : noLazyImports) },
}));

const viewRules = [1, 2, 3].map((depth) => ({
  files: [`src/views/${'*/'.repeat(depth)}*.{ts,tsx}`],
  rules: importRule([...patternsOf('views'), sidewaysPattern(depth)]),
}));

export default [...roomRules, ...viewRules];
