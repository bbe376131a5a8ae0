import js from '@eslint/js'
import globals from 'globals'
import tseslint from 'typescript-eslint'
import { usEnglish } from './tools/language.mjs'

export default tseslint.config(
  { ignores: ['dist/**', 'build/**', 'node_modules/**', 'coverage/**'] },
  js.configs.recommended,
  ...tseslint.configs.strict,
  ...tseslint.configs.stylistic,
  {
    plugins: { language: { rules: { 'us-english': usEnglish } } },
    rules: { 'language/us-english': 'error' }
  },
  {
    files: ['**/*.ts'],
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
      'no-restricted-properties': [
        'error',
        { property: 'innerHTML', message: 'Build elements; never parse text as HTML.' },
        { property: 'outerHTML', message: 'Build elements; never parse text as HTML.' }
      ],
      eqeqeq: 'error'
    }
  },
  {
    /** What needs types to be seen, in what users run; no-unnecessary-condition is left out, as awaiting confuses it. */
    files: ['{shared,src,functions,taskpane}/**/*.ts'],
    languageOptions: {
      parserOptions: { project: 'tsconfig.product.json', tsconfigRootDir: import.meta.dirname }
    },
    rules: {
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: false }
      ],
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': 'error',
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/only-throw-error': 'error',
      '@typescript-eslint/prefer-promise-reject-errors': 'error',
      '@typescript-eslint/restrict-plus-operands': 'error',
      '@typescript-eslint/require-array-sort-compare': ['error', { ignoreStringArrays: true }]
    }
  },
  {
    files: [
      'tools/**',
      '*.mjs',
      '*.cjs',
      '.*.cjs',
      'tests/**',
      'bench/**',
      'src/file/**',
      'src/workbench/**'
    ],
    languageOptions: { globals: { ...globals.node } }
  },
  {
    files: ['tools/**/*.cjs', '*.cjs', '.*.cjs'],
    rules: { '@typescript-eslint/no-require-imports': 'off' }
  },
  {
    files: ['tests/**'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' }
  }
)
