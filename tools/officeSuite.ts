import { spawnSync } from 'node:child_process'
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

/** A program that has to be there and is not, reported in a sentence. */
export class MissingProgram extends Error {}

const patience = 240_000

function run(program: string, parameters: readonly string[], wanted: string): string {
  const { error, status, stdout, stderr } = spawnSync(program, parameters, {
    encoding: 'utf8',
    timeout: patience
  })
  if ((error as NodeJS.ErrnoException | undefined)?.code === 'ENOENT')
    throw new MissingProgram(
      `The program ${program} is missing: install ${wanted}, then run the check again.`
    )
  if (error !== undefined) throw error
  if (status !== 0) throw new Error(`${program} ended with ${String(status)}: ${stderr.trim()}`)
  return stdout
}

/**
 * Recalculate every workbook as it is opened, whatever values it brings: 0 is "always", of the settings of
 * org.openoffice.Office.Calc, Formula/Load.
 */
const settings = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
  <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
    <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop>
  </item>
</oor:items>
`

/** LibreOffice with a profile of its own in this folder, so that nobody's settings are read or changed. */
export class OfficeSuite {
  private readonly profile: string

  constructor(folder: string) {
    this.profile = join(folder, 'profile')
    mkdirSync(join(this.profile, 'user'), { recursive: true })
    writeFileSync(join(this.profile, 'user', 'registrymodifications.xcu'), settings)
  }

  private start(...parameters: string[]): string {
    const installation = `-env:UserInstallation=${pathToFileURL(this.profile).href}`
    return run('soffice', [installation, '--headless', ...parameters], 'LibreOffice Calc')
  }

  version(): string {
    return this.start('--version').trim().split(/\s+/).slice(0, 2).join(' ')
  }

  /** Opens the files and saves each in another format under its own name into a folder. */
  convert(files: readonly string[], format: 'xlsx' | 'pdf', into: string): string[] {
    mkdirSync(into, { recursive: true })
    this.start('--convert-to', format, '--outdir', into, ...files)
    const made = readdirSync(into).map((name) => join(into, name))
    if (made.length !== files.length)
      throw new Error(`LibreOffice made ${String(made.length)} files of ${String(files.length)} in ${into}.`)
    return made
  }
}

/** The text of a PDF, page by page. */
export function pagesOf(pdf: string): string[] {
  const text = run('pdftotext', ['-layout', '-enc', 'UTF-8', pdf, '-'], 'Poppler’s utilities')
  return text.split('\f').slice(0, -1)
}
