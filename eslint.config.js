import stylistic from '@stylistic/eslint-plugin'
import { defineConfig, globalIgnores } from 'eslint/config'
import tseslint from 'typescript-eslint'

/** The rooms that neither read, write nor wait, and know no clock and no chance: everything down to `draw`. */
const pureRooms = [
  'math', 'record', 'standards', 'parts', 'words', 'blocks', 'routes', 'circuit', 'faults', 'inspect', 'size', 'loom',
  'prove', 'trace', 'editions', 'explain', 'draw',
]

const tests = ['**/*.test.ts', '**/*.test.tsx', 'test/**']

/** @type {import('eslint').Rule.RuleModule} */
const anyNeedsComment = {
  meta: { type: 'suggestion', schema: [], messages: { bare: '`any` needs a comment on its line or the line above that says why.' } },
  create(context) {
    return {
      /** @param {import('eslint').Rule.Node} node a node of the TypeScript parser, which always has its place */
      TSAnyKeyword(node) {
        const line = node.loc?.start.line ?? 0
        const comments = context.sourceCode.getAllComments()
        if (comments.some(({ loc }) => loc?.end.line === line - 1 || loc?.start.line === line)) return
        context.report({ node, messageId: 'bare' })
      },
    }
  },
}

export default defineConfig(
  globalIgnores(['dist/', 'coverage/', 'test-results/']),
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  tseslint.configs.strict,
  {
    files: ['**/*.{ts,tsx,js}'],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    plugins: { '@stylistic': stylistic, loomwright: { rules: { 'any-needs-comment': anyNeedsComment } } },
    rules: {
      eqeqeq: 'error',
      'no-console': 'off',
      'prefer-const': 'error',
      'loomwright/any-needs-comment': 'error',
      '@typescript-eslint/no-explicit-any': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_', caughtErrors: 'none' }],
      '@typescript-eslint/no-invalid-void-type': 'off',
      // These ask the type checker.
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: { attributes: false } }],
      '@typescript-eslint/only-throw-error': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      // Layout that `npm run format` puts right.
      '@stylistic/semi': ['error', 'never'],
      '@stylistic/quotes': ['error', 'single', { avoidEscape: true, allowTemplateLiterals: 'always' }],
      '@stylistic/indent': ['error', 2, { SwitchCase: 1, flatTernaryExpressions: true }],
      '@stylistic/comma-spacing': 'error',
      '@stylistic/keyword-spacing': 'error',
      '@stylistic/object-curly-spacing': ['error', 'always'],
      '@stylistic/space-infix-ops': 'error',
      '@stylistic/arrow-parens': 'error',
      '@stylistic/eol-last': 'error',
      '@stylistic/no-trailing-spaces': 'error',
      '@stylistic/no-multiple-empty-lines': ['error', { max: 1, maxBOF: 0, maxEOF: 0 }],
    },
  },
  { files: tests, rules: { '@typescript-eslint/no-non-null-assertion': 'off' } },
  {
    files: pureRooms.map((room) => `src/${room}/**/*.ts`),
    ignores: tests,
    rules: {
      'no-restricted-imports': ['error', { patterns: [{ group: ['node:*'], message: 'A pure room does not read, write or wait.' }] }],
      'no-restricted-globals': [
        'error', 'process', 'Buffer', 'fetch', 'window', 'document', 'localStorage', 'setTimeout', 'setInterval', 'performance',
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'Chance is seeded, and the seed is given.' },
        { object: 'Date', property: 'now', message: 'The time is given.' },
      ],
      'no-restricted-syntax': [
        'error',
        { selector: 'NewExpression[callee.name="Date"][arguments.length=0]', message: 'The time is given.' },
      ],
    },
  },
)
