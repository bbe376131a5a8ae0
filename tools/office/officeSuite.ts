import { spawnSync } from 'node:child_process'
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

/** A program that has to be there and is not, reported in a sentence. */
export class MissingProgram extends Error {}

const patience = 480_000

/** What a program prints, run to its end; a missing program is reported with what installs it. */
export function run(
  program: string,
  parameters: readonly string[],
  wanted: string,
  environment: Readonly<Record<string, string>> = {}
): string {
  const { error, status, stdout, stderr } = spawnSync(program, parameters, {
    encoding: 'utf8',
    timeout: patience,
    maxBuffer: 1 << 28,
    env: { ...process.env, ...environment }
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

/** With the font of the same measure as the usual one, Calibri, or on a machine that has nothing of the kind. */
export type Fonts = 'metric font' | 'fallback font'

/** Carlito is the font of Calibri's measure; these are what a system may take in its place. */
const withoutMetricFont = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <include ignore_missing="yes">/etc/fonts/fonts.conf</include>
  <selectfont>
    <rejectfont><pattern><patelt name="family"><string>Carlito</string></patelt></pattern></rejectfont>
    <rejectfont><pattern><patelt name="family"><string>Calibri</string></patelt></pattern></rejectfont>
  </selectfont>
</fontconfig>
`

/** LibreOffice with a profile of its own in this folder, so that nobody's settings are read or changed. */
export class OfficeSuite {
  private readonly profile: string
  private readonly environment: Readonly<Record<string, string>>

  constructor(folder: string, fonts: Fonts = 'metric font') {
    this.profile = join(folder, 'profile')
    mkdirSync(join(this.profile, 'user'), { recursive: true })
    writeFileSync(join(this.profile, 'user', 'registrymodifications.xcu'), settings)
    const fontFile = join(folder, 'fonts.conf')
    if (fonts === 'fallback font') writeFileSync(fontFile, withoutMetricFont)
    this.environment = fonts === 'fallback font' ? { FONTCONFIG_FILE: fontFile } : {}
    const usual = run('fc-match', ['-f', '%{family}', 'Calibri'], 'fontconfig', this.environment)
    if ((fonts === 'metric font') !== /Carlito|Calibri/.test(usual))
      throw new MissingProgram(
        fonts === 'metric font'
          ? 'The font Carlito is missing: install it (fonts-crosextra-carlito), then run the check again.'
          : `A font of Calibri’s measure cannot be left out: ${usual}.`
      )
  }

  private start(...parameters: string[]): string {
    const installation = `-env:UserInstallation=${pathToFileURL(this.profile).href}`
    return run('soffice', [installation, '--headless', ...parameters], 'LibreOffice Calc', this.environment)
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
