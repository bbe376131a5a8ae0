import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildAddin, hostedOffice } from '../../tools/build'

/** The address the tests build for: a folder of a host, as a deployment would have it. */
export const testBase = 'https://example.org/limbwright'

/** Builds the deployable add-in into a folder of its own and gives its path. */
export async function buildForTest(): Promise<string> {
  const out = mkdtempSync(join(tmpdir(), 'limbwright-'))
  await buildAddin({ out, base: `${testBase}/`, office: hostedOffice })
  return out
}
