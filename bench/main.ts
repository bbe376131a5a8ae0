/**
 * `npm run bench`: speed as ratios inside one run, start-up, memory and size as absolute limits. Exits with 1 where a
 * limit is not kept. Never part of the tests, as a busy machine would fail them.
 */
import { cellFunction, planning } from './engine'
import { fullSheetPlan } from './fullSheet'
import { report } from './measure'
import { paneSize, workbenchReady } from './surfaces'

async function main(): Promise<void> {
  const parts = [planning, cellFunction, fullSheetPlan, paneSize, workbenchReady]
  let kept = true
  for (const part of parts) kept = report(await part()) && kept
  process.exitCode = kept ? 0 : 1
}

void main()
