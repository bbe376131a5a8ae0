/** One run for everything, in two parts: what needs a browser shares one, and is the only part that starts it. */
const common = {
  testEnvironment: 'node',
  testEnvironmentOptions: { globalsCleanup: 'off' },
  transform: {
    '^.+\\.ts$': ['ts-jest', { tsconfig: 'tests/tsconfig.json' }],
    '^.+\\.mjs$': '<rootDir>/tools/jest-esm.cjs'
  },
  transformIgnorePatterns: ['/node_modules/(?!hucre/)'],
  moduleFileExtensions: ['ts', 'mjs', 'js', 'cjs', 'json']
}

module.exports = {
  maxWorkers: '100%',
  testSequencer: '<rootDir>/tools/longest-first.cjs',
  testTimeout: 30000,
  projects: [
    {
      ...common,
      displayName: 'browser',
      testMatch: ['<rootDir>/tests/browser/**/*.test.ts'],
      globalSetup: '<rootDir>/tests/browser/start.ts',
      globalTeardown: '<rootDir>/tests/browser/stop.ts'
    },
    {
      ...common,
      displayName: 'unit',
      testMatch: ['<rootDir>/tests/**/*.test.ts'],
      testPathIgnorePatterns: ['<rootDir>/tests/browser/']
    }
  ]
}
