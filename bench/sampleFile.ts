import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Measurement } from './measure'

const turns = 5

/** The sample's file with all documents, from typing the command until it has ended; the best of some runs. */
export function sampleFile(): Measurement[] {
  const folder = mkdtempSync(join(tmpdir(), 'limbwright-bench-'))
  const out = join(folder, 'sample.xlsx')
  const command = ['--import', 'tsx', join(__dirname, '../src/file/main.ts'), '--out', out]
  const times: number[] = []
  try {
    for (let turn = 0; turn < turns; turn++) {
      rmSync(out, { force: true })
      const start = performance.now()
      execFileSync(process.execPath, command, { cwd: join(__dirname, '..'), encoding: 'utf8' })
      times.push((performance.now() - start) / 1000)
      if (statSync(out).size === 0) throw new Error('The file is empty')
    }
  } finally {
    rmSync(folder, { recursive: true })
  }
  const note = `${times.map((time) => time.toFixed(2)).join(', ')} s`
  const what = 'plan the sample and write its file with all documents'
  return [{ what, value: Math.min(...times), unit: 's', limit: 2, note }]
}
