import js from '@eslint/js'
import vue from 'eslint-plugin-vue'
import a11y from 'eslint-plugin-vuejs-accessibility'
import importX from 'eslint-plugin-import-x'
import jsdoc from 'eslint-plugin-jsdoc'
import { createTypeScriptImportResolver } from 'eslint-import-resolver-typescript'
import { defineConfig, globalIgnores } from 'eslint/config'
import ts from 'typescript-eslint'
import prettier from 'eslint-config-prettier/flat'
import globals from 'globals'

/** Core modules from left to right: a module imports only those left of it. */
export const coreOrder = [
  'units',
  'geometry',
  'booking',
  'survey',
  'terrain',
  'accuracy',
  'sun',
  'climate',
  'shade',
  'soil',
  'water',
  'zones',
  'scores',
  'cover',
  'plants',
  'care',
]

/** Libraries that one core module may use. */
const coreLibraries = { geometry: ['delaunator$', '@kninnug/constrainautor$'], sun: ['suncalc$'] }

/** What each layer may import besides its own folder and zod. */
export const layers = {
  plan: ['#core/'],
  io: ['#core/', '#plan$', '#data/', 'papaparse$', 'geomagnetism$'],
  files: ['#core/', '#plan$', '#io$', 'geotiff$', 'fast-xml-parser$', 'proj4$'],
  report: [
    '#core/',
    '#plan$',
    'vue$',
    'vue/server-renderer$',
    'd3-',
    '(\\.\\./){1,2}(figures|drawing|style|words|ramps|section-view|plan-view|plan-shade|light-picture)',
  ],
  worker: ['#core/', '#plan$', '#io$', '#files$'],
  cli: ['#core/', '#plan$', '#io$', '#files$', '#report$', 'node:'],
  app: [
    '#core/',
    '#plan$',
    '#io$',
    '#files$',
    '#report$',
    '#worker$',
    'vue$',
    'pinia$',
    'leaflet',
    'idb$',
    'd3-',
    '@fontsource',
    '(\\.\\./){1,2}(components|composables|stores|views|drawing|edits)/',
    // Views and components in folders of their own, beside one another.
    '\\.\\./(desk|margin|start)/',
    '\\.\\./[A-Z]\\w+\\.vue$',
  ],
}

/** The one rule that keeps the layers: anything not allowed is refused. */
const only = (place, allowed) => ({
  files: [`src/${place}/**/*.{ts,vue}`],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          { regex: `^(?!${['\\./', 'zod$', ...allowed].join('|')})`, message: 'see layers in DEVELOPERS.md' },
        ],
      },
    ],
  },
})

const coreRules = coreOrder.map((name, at) =>
  only(`core/${name}`, [
    ...coreOrder.slice(0, at).map((left) => `#core/${left}$`),
    ...(coreLibraries[name] ?? []),
  ]),
)

export default defineConfig(
  globalIgnores(['dist', 'dist-cli', 'coverage', '.cache', 'tests/browser/out']),
  js.configs.recommended,
  ts.configs.recommendedTypeChecked,
  vue.configs['flat/recommended'],
  a11y.configs['flat/recommended'],
  {
    rules: {
      'vuejs-accessibility/label-has-for': ['error', { required: { some: ['nesting', 'id'] } }],
      // It refuses a correct label-for pair; axe checks labels in the browser tests.
      'vuejs-accessibility/form-control-has-label': 'off',
    },
  },
  {
    files: ['**/*.ts', '**/*.vue'],
    languageOptions: {
      globals: { ...globals.browser, ...globals.node },
      parserOptions: { parser: ts.parser, projectService: true, extraFileExtensions: ['.vue'] },
    },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      'vue/multi-word-component-names': 'off',
      // TypeScript itself finds undefined names.
      'no-undef': 'off',
    },
  },
  {
    files: ['src/**/*.ts'],
    plugins: { 'import-x': importX },
    settings: {
      'import-x/extensions': ['.ts'],
      'import-x/parsers': { '@typescript-eslint/parser': ['.ts'] },
      'import-x/resolver-next': [createTypeScriptImportResolver({ project: './tsconfig.json' })],
    },
    rules: { 'import-x/no-cycle': 'error' },
  },
  {
    files: ['src/**/*.{ts,vue}'],
    rules: {
      complexity: ['error', 10],
      'max-params': ['error', 4],
      'max-lines': ['error', { max: 200, skipBlankLines: true, skipComments: true }],
      'max-lines-per-function': ['error', { max: 50, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    files: ['src/{core,plan,io,report,worker,cli}/**/*.ts'],
    rules: {
      'no-restricted-syntax': [
        'error',
        { selector: 'ImportExpression', message: 'dynamic imports hide a layer; only src/app may use them' },
      ],
    },
  },
  {
    files: ['src/core/**/*.ts'],
    plugins: { jsdoc },
    settings: { jsdoc: { mode: 'typescript' } },
    rules: {
      'no-restricted-globals': ['error', 'Date', 'performance', 'crypto', 'setTimeout', 'fetch'],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'core is deterministic: pass a seed' },
      ],
      'jsdoc/require-jsdoc': ['error', { publicOnly: true }],
      'jsdoc/require-param': 'error',
      'jsdoc/require-param-description': 'error',
      'jsdoc/require-returns': 'error',
      'jsdoc/require-throws': 'error',
    },
  },
  {
    // The sun needs an instant to stand at; it still may not ask what time it is.
    files: ['src/core/sun/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', 'performance', 'crypto', 'setTimeout', 'fetch'],
      'no-restricted-syntax': [
        'error',
        { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: 'core has no clock' },
        {
          selector: "MemberExpression[object.name='Date'][property.name='now']",
          message: 'core has no clock',
        },
      ],
    },
  },
  ...coreRules,
  ...Object.entries(layers).map(([place, allowed]) => only(place, allowed)),
  only('app/components', [
    'vue$',
    '#core/',
    '#report$',
    '(\\.\\./){1,2}(components|drawing)/',
    '\\.\\./[A-Z]\\w+\\.vue$',
    'leaflet',
  ]),
  only('app/drawing', ['#core/', '#report$', 'd3-']),
  only('app/edits', ['#core/', '#plan$']),
  {
    files: ['**/*.js', '**/*.mjs'],
    extends: [ts.configs.disableTypeChecked],
    languageOptions: { globals: { ...globals.node, ...globals.browser } },
  },
  prettier,
)
