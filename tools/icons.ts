/** Draws the icons of `assets/*.svg` as PNG in the sizes that Office asks for. The PNG files are kept in the repository. */
import { mkdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { startBrowser } from '../tests/browser/browser'

const assets = join(__dirname, '..', 'assets')

export const iconNames = ['icon', 'plan', 'pane'] as const
export const iconSizes = [16, 20, 24, 32, 40, 48, 64, 80] as const

/** Up to this size a drawing with fewer and thicker parts is used. */
const smallUpTo = 24

async function drawIcons(): Promise<void> {
  mkdirSync(join(assets, 'icons'), { recursive: true })
  const browser = await startBrowser()
  try {
    const page = await browser.newPage()
    for (const name of iconNames) {
      for (const size of iconSizes) {
        const file = size <= smallUpTo ? `${name}-small.svg` : `${name}.svg`
        const drawing = readFileSync(join(assets, file)).toString('base64')
        await page.setViewportSize({ width: size, height: size })
        await page.setContent(
          `<body style="margin:0"><img style="display:block" width="${size}" height="${size}" src="data:image/svg+xml;base64,${drawing}">`
        )
        await page.screenshot({ path: join(assets, 'icons', `${name}-${size}.png`), omitBackground: true })
      }
    }
  } finally {
    await browser.close()
  }
}

if (require.main === module)
  drawIcons().catch((error: unknown) => {
    console.error(error instanceof Error ? error.message : error)
    process.exitCode = 1
  })
