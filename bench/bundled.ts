import { execFileSync } from 'node:child_process'
import { join } from 'node:path'
import { buildSync } from 'esbuild'

/**
 * Runs a file of the bench bundled, as the add-in runs its engine, in a process of its own, so that neither the memory
 * nor the warmth of one measurement reaches another. Its objects may take so many megabytes. Gives what it prints.
 */
export function runBundled(name: string, heap = 8192): string {
  const outfile = join(__dirname, '../build/bench', `${name}.cjs`)
  buildSync({
    entryPoints: [join(__dirname, `${name}.ts`)],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    // Painted by a part that is not JavaScript; the Office library is evaluated as it is.
    external: ['@resvg/resvg-js', 'dejavu-fonts-ttf', '@microsoft/office-js'],
    logLevel: 'error'
  })
  return execFileSync(process.execPath, ['--expose-gc', `--max-old-space-size=${heap}`, outfile], {
    encoding: 'utf8'
  })
}
