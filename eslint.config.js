import reactHooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';
import rooms from './eslint.rooms.js';

export default tseslint.config(
  { ignores: ['dist', 'reports', 'test-results', 'playwright-report', 'coverage'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    files: ['**/*.{ts,tsx}'],
    extends: [...tseslint.configs.strictTypeChecked, reactHooks.configs.flat.recommended],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      // Also closes `import('…').Type`, which would slip past the import directions.
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      'no-console': 'error',
      eqeqeq: 'error',
    },
  },
  {
    // Loops over typed arrays, and over the corners of every outline of a frame, know their own bounds.
    files: ['src/physics/**/*.ts', 'src/charts/windsEye/*.ts'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' },
  },
  {
    // These speak to a terminal.
    files: ['src/terminal/**/*.ts', 'tests/**/*.{ts,tsx}', '*.config.ts'],
    rules: { 'no-console': 'off' },
  },
  ...rooms,
);
