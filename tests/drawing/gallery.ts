/**
 * Pictures of the drawings into build/screenshots/drawings: every tree of the sample and of the invented trees, before
 * and after each visit, on a light page, a dark one, in forced colors and as printed; with the charts. Run with
 * `npx tsx tests/drawing/gallery.ts [part of a tree's name]`, then look at the pictures.
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import type { Plan, TreePlan } from '../../src/plan/plan'
import { drawTree, fittingHeight } from '../../src/drawing/drawTree'
import type { Drawing, DrawingPalette } from '../../src/drawing/shapes'
import { toSvg } from '../../src/drawing/paint/toSvg'
import { doseChart } from '../../src/drawing/charts/doseChart'
import { priceChart } from '../../src/sheets/estimate/priceChart'
import { ratioChart } from '../../src/drawing/charts/ratioChart'
import { estimatePlan } from '../../src/price/estimatePlan'
import { startBrowser } from '../browser/browser'
import { inventedPlan, samplePlan } from './inventedTrees'

const folder = join(__dirname, '../../build/screenshots/drawings')

/** The colors that the pane would lend. */
const pageStyle = `
  body { margin: 8px; display: flex; flex-wrap: wrap; gap: 10px; align-items: flex-start;
    font-family: 'Segoe UI', Arial, 'DejaVu Sans', sans-serif; background: #fdfcf8; color: #1d2722;
    --drawing-paper: #fdfcf8; --drawing-leader: #2c5a41; --drawing-cut: #8a4318; --drawing-wood: #8a6748 }
  .dark { background: #181b19; color: #ebe8df; --drawing-paper: #181b19; --drawing-leader: #9cc4a6;
    --drawing-cut: #e0a77a; --drawing-wood: #b99a7c }
  .forced { background: Canvas; color: CanvasText; --drawing-paper: Canvas; --drawing-leader: CanvasText;
    --drawing-cut: CanvasText; --drawing-wood: CanvasText }
  svg { outline: 1px solid #8884 }`

const modes = {
  light: {
    ground: 'page',
    palette: 'color',
    body: '',
    media: { colorScheme: 'light', forcedColors: 'none' }
  },
  dark: {
    ground: 'page',
    palette: 'color',
    body: 'dark',
    media: { colorScheme: 'dark', forcedColors: 'none' }
  },
  forced: {
    ground: 'page',
    palette: 'color',
    body: 'forced',
    media: { colorScheme: 'dark', forcedColors: 'active' }
  },
  file: {
    ground: 'paper',
    palette: 'color',
    body: '',
    media: { colorScheme: 'light', forcedColors: 'none' }
  },
  print: {
    ground: 'paper',
    palette: 'print',
    body: '',
    media: { colorScheme: 'light', forcedColors: 'none' }
  }
} as const

function drawings(plan: Plan, tree: TreePlan, width: number, palette: DrawingPalette): Drawing[] {
  const { system } = plan
  const visits = tree.visits.length === 0 ? [null] : tree.visits.slice(0, 2)
  return visits.flatMap((visit) =>
    (visit === null ? (['before'] as const) : (['before', 'after'] as const)).map((when) => {
      const height = fittingHeight(tree, visit, { width, system, when })
      return drawTree(tree, visit, { width, height, system, when, palette })
    })
  )
}

function charts(plan: Plan, tree: TreePlan, width: number, palette: DrawingPalette): Drawing[] {
  const options = { width, height: 220, palette }
  const estimate = estimatePlan(plan)
  return [
    doseChart(tree, options),
    ratioChart(tree, options),
    priceChart(estimate, { ...options, tree: tree.tree.id }),
    priceChart(estimate, options)
  ]
}

/** One page for all pictures, grown to the size of what it shows before it is taken. */
async function shoot(page: Page, name: string, svgs: string[], mode: keyof typeof modes, wide: number) {
  await page.emulateMedia(modes[mode].media)
  await page.setContent(
    `<!doctype html><style>${pageStyle}</style><body class="${modes[mode].body}">${svgs.join('')}</body>`
  )
  await page.setViewportSize({ width: wide, height: 300 })
  const height = (await page.evaluate('document.documentElement.scrollHeight')) as number
  await page.setViewportSize({ width: wide, height })
  await page.screenshot({ path: join(folder, `${name}.png`) })
}

async function main(): Promise<void> {
  mkdirSync(folder, { recursive: true })
  const [wanted = '', only = '', widthText = '304'] = process.argv.slice(2)
  const width = Number(widthText)
  const browser = await startBrowser()
  try {
    const page = await browser.newPage({ deviceScaleFactor: 1.5 })
    for (const plan of [samplePlan(), inventedPlan()])
      for (const tree of plan.trees.filter((each) => each.tree.id.includes(wanted)))
        for (const [mode, { ground, palette }] of Object.entries(modes)) {
          if (only !== '' && only !== mode) continue
          const name = `${tree.tree.id.replace(/\s+/g, '-')}-${mode}-${String(width)}`
          const shown = [...drawings(plan, tree, width, palette), ...charts(plan, tree, width, palette)]
          const svgs = shown.map((drawing) => toSvg(drawing, ground))
          if (ground === 'paper')
            svgs.forEach((svg, index) => {
              writeFileSync(join(folder, `${name}-${String(index + 1)}.svg`), svg)
            })
          await shoot(
            page,
            name,
            svgs,
            mode as keyof typeof modes,
            (width + 10) * Math.min(svgs.length, 4) + 16
          )
        }
  } finally {
    await browser.close()
  }
}

void main()
