import { buildForExcel } from '../../src/workbench/server/built'

/** The address the tests build for: a folder of a host, as a deployment would have it. */
export const testBase = 'https://example.org/limbwright'

/** The folder of the deployable add-in, built once for each state of the sources: only to be read. */
export function buildForTest(): Promise<string> {
  return buildForExcel(`${testBase}/`)
}
