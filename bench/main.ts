/**
 * `npm run bench`: speed as ratios inside one run, start-up, memory and size as absolute limits. Exits with 1 where a
 * limit is not kept. Never part of the tests, as a busy machine would fail them. `npm run bench -- documents workbook`
 * measures those parts alone.
 */
import { runBundled } from './bundled'
import { report, type Measurement } from './measure'
import { sampleFile } from './sampleFile'
import { paneSize, workbenchReady } from './surfaces'

const bundled = (name: string, heap?: number) => (): Measurement[] =>
  JSON.parse(runBundled(name, heap)) as Measurement[]

const parts: Readonly<Record<string, () => Measurement[] | Promise<Measurement[]>>> = {
  engine: bundled('engineRun'),
  opening: bundled('openingRun'),
  // What it needs shows only where it may not take more: the engine tidies up late while there is room.
  'full-sheet': bundled('fullSheetRun', 900),
  documents: bundled('documentsRun'),
  workbook: bundled('workbookRun'),
  finding: bundled('findingRun'),
  sample: sampleFile,
  pane: paneSize,
  workbench: workbenchReady
}

async function main(asked: readonly string[]): Promise<void> {
  const unknown = asked.filter((name) => !(name in parts))
  if (unknown.length > 0) {
    console.error(`No such part: ${unknown.join(', ')}. There are ${Object.keys(parts).join(', ')}.`)
    process.exitCode = 2
    return
  }
  let kept = true
  for (const [name, part] of Object.entries(parts))
    if (asked.length === 0 || asked.includes(name)) kept = report(await part()) && kept
  process.exitCode = kept ? 0 : 1
}

void main(process.argv.slice(2))
