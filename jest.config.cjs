/** One run for everything: unit, published, host and browser tests. */
module.exports = {
  testEnvironment: 'node',
  testEnvironmentOptions: { globalsCleanup: 'off' },
  roots: ['<rootDir>/tests'],
  testMatch: ['**/*.test.ts'],
  transform: {
    '^.+\\.ts$': ['ts-jest', { tsconfig: 'tests/tsconfig.json' }],
    '^.+\\.mjs$': '<rootDir>/tools/jest-esm.cjs'
  },
  transformIgnorePatterns: ['/node_modules/(?!hucre/)'],
  moduleFileExtensions: ['ts', 'mjs', 'js', 'cjs', 'json'],
  testTimeout: 30000
}
