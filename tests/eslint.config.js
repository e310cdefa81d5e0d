import reactHooks from 'eslint-plugin-react-hooks';
import { fileURLToPath } from 'node:url';
import tseslint from 'typescript-eslint';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

const NO_REEXPORT = 'Do not pass on what another file exports: let the reader import that file itself.';

/** House rules that ESLint has no rule of its own for. */
const HOUSE_SYNTAX = [
  { selector: 'ExportAllDeclaration', message: NO_REEXPORT },
  { selector: 'ExportNamedDeclaration[source]', message: NO_REEXPORT },
  {
    selector: 'TSEnumDeclaration',
    message: 'Use a union of string literals: it goes through JSON and a worker unchanged.',
  },
  {
    selector: 'ImportDeclaration[source.value=/^\\.{1,2}\\u002F/]:not([source.value=/\\.[a-z0-9]+(\\?[a-z]+)?$/])',
    message: "Name the file with its ending: import { x } from './y.ts'.",
  },
];

const NO_DEFAULT = {
  selector: 'ExportDefaultDeclaration',
  message: 'Export by name, so that one thing is called the same everywhere.',
};

const TOLERANCE =
  'A tolerance goes to geometry/units.ts by name, with unit and reason. A weight or a count is a named const of its file, in decimals.';

/** Small bare figures: powers of ten, those compared with, private lengths, and how nearly a curve is followed. */
const NO_BARE_TOLERANCE = [
  'Literal[raw=/^[\\d.]+e-/i]',
  'BinaryExpression[operator=/^[<>]=?$/] > Literal[raw=/^0?\\.0\\d/]',
  'BinaryExpression[operator=/^[<>]=?$/] > UnaryExpression > Literal[raw=/^0?\\.0\\d/]',
  'VariableDeclarator[id.name=/_MM2?$/] > Literal[raw=/^0?\\.0\\d/]',
  'VariableDeclarator[id.name=/(FLAT|FLATTEN|FIT|ERROR|SIMPLE)_MM$/] > Literal[raw=/\\./]',
  'CallExpression[callee.name=/^(flatten|contourToRing|fitArcs|fitCurves|thinRing|polylabel)/] > Literal[raw=/\\./]',
].map((selector) => ({ selector, message: TOLERANCE }));

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', 'test-results/', 'playwright-report/', 'out/', '.cache/'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    files: ['**/*.{ts,tsx}'],
    extends: [tseslint.configs.recommendedTypeChecked],
    plugins: { 'react-hooks': reactHooks },
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: ROOT } },
    rules: {
      ...reactHooks.configs.recommended.rules,
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'separate-type-imports' }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      'no-restricted-syntax': ['error', ...HOUSE_SYNTAX, NO_DEFAULT],
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'no-console': 'error',
    },
  },
  {
    // Their tools ask for a default export.
    files: ['**/*.config.{ts,js}', '**/*.d.ts'],
    rules: { 'no-restricted-syntax': ['error', ...HOUSE_SYNTAX] },
  },
  {
    files: ['geometry/**/*.ts', 'web/**/*.{ts,tsx}'],
    ignores: ['geometry/units.ts', '**/*.d.ts', '**/*.config.ts'],
    rules: { 'no-restricted-syntax': ['error', ...HOUSE_SYNTAX, NO_DEFAULT, ...NO_BARE_TOLERANCE] },
  },
  {
    // These speak to a terminal.
    files: ['geometry/command/**', 'tests/**', 'e2e/**'],
    rules: { 'no-console': 'off' },
  },
  {
    files: ['**/*.{js,mjs}'],
    rules: {
      'no-unused-vars': 'error',
      'no-restricted-syntax': ['error', ...HOUSE_SYNTAX.slice(0, 2)],
      eqeqeq: ['error', 'always', { null: 'ignore' }],
    },
  },
);
