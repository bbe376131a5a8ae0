/**
 * `npm run bench`: speed as ratios inside one run, start-up and size as absolute limits. Exits with 1 where a limit is
 * not kept. Never part of the tests, as a busy machine would fail them.
 */
import { cellFunction, planning } from './engine'
import { report } from './measure'

const kept = report([...planning(), ...cellFunction()])
process.exitCode = kept ? 0 : 1
