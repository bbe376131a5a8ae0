import js from '@eslint/js'
import globals from 'globals'
import tseslint from 'typescript-eslint'

export default tseslint.config(
  { ignores: ['dist/**', 'build/**', 'node_modules/**', 'coverage/**'] },
  js.configs.recommended,
  ...tseslint.configs.strict,
  ...tseslint.configs.stylistic,
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
    files: ['tools/**', '*.mjs', '*.cjs', 'tests/**', 'bench/**', 'src/file/**', 'src/workbench/**'],
    languageOptions: { globals: { ...globals.node } }
  },
  {
    files: ['tools/**/*.cjs', '*.cjs'],
    rules: { '@typescript-eslint/no-require-imports': 'off' }
  },
  {
    files: ['tests/**'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' }
  }
)
