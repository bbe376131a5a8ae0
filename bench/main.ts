/**
 * `npm run bench`: speed as ratios inside one run, start-up, memory and size as absolute limits. Exits with 1 where a
 * limit is not kept. Never part of the tests, as a busy machine would fail them.
 */
import { runBundled } from './bundled'
import { report, type Measurement } from './measure'
import { paneSize, workbenchReady } from './surfaces'

const bundled = (name: string): Measurement[] => JSON.parse(runBundled(name)) as Measurement[]

async function main(): Promise<void> {
  const parts = [
    () => bundled('engineRun'),
    () => bundled('openingRun'),
    () => bundled('fullSheetRun'),
    () => bundled('documentsRun'),
    () => bundled('workbookRun'),
    () => bundled('findingRun'),
    paneSize,
    workbenchReady
  ]
  let kept = true
  for (const part of parts) kept = report(await part()) && kept
  process.exitCode = kept ? 0 : 1
}

void main()
