// What the compiler cannot see: size limits of functions and files, and habits of this house.
import tseslint from 'typescript-eslint';

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', 'coverage/'] },
  ...tseslint.configs.strictTypeChecked,
  {
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname },
    },
    rules: {
      'max-lines': ['error', { max: 300, skipBlankLines: false, skipComments: false }],
      'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
      'max-params': ['error', 3],
      complexity: ['error', 14],
      eqeqeq: 'error',
      'no-console': 'error',
      'no-restricted-globals': ['error', { name: 'process', message: 'Only src/cli touches the machine.' }],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/consistent-type-imports': 'error',
    },
  },
  {
    files: ['src/cli/**', 'tests/**'],
    rules: { 'no-restricted-globals': 'off' },
  },
  {
    files: ['tests/**'],
    // Of the rules that need types, those on promises: a test that awaits nothing cannot fail.
    extends: [tseslint.configs.disableTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      'max-lines-per-function': 'off',
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': 'error',
      '@typescript-eslint/await-thenable': 'error',
    },
  },
  // What is not TypeScript: the starter, the build and this file. They are CommonJS because that starts faster.
  {
    files: ['**/*.mjs', '**/*.cjs'],
    extends: [tseslint.configs.disableTypeChecked],
    rules: { 'no-restricted-globals': 'off', '@typescript-eslint/no-require-imports': 'off' },
  },
);
