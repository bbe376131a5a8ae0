/** A workbook with an inventory, a sheet of the user's and what the add-in wrote, and how its sheets are told apart. */
import { createHash } from 'node:crypto'
import type { DrawingPainter } from '../../../src/drawing/paint/painter'
import { applySheets, type AppliedSheets } from '../../../src/excel/applySheets'
import { isProblem } from '../../../src/excel/failures'
import { readInventorySheets } from '../../../src/excel/readInventorySheets'
import { showsInventory } from '../../../src/inventory/survey/showsInventory'
import type { SheetCells } from '../../../src/inventory/survey/sheetCells'
import type { PageSetup, SheetDescription } from '../../../src/sheets/sheet'
import type { Problem } from '../../../shared/problems'
import { metricRows } from '../../sheets/samplePlan'
import { fill, startWith, type InventoryBook } from '../inventorySheet'

const one = { row: 0, column: 0, rows: 1, columns: 1 }
const picture = {
  area: one,
  width: 40,
  height: 20,
  alt: 'A tree',
  draw: () => ({
    width: 40,
    height: 20,
    title: 'A tree',
    alt: 'A tree',
    palette: 'print' as const,
    shapes: []
  })
}
const page: PageSetup = {
  orientation: 'landscape',
  paper: 'a4',
  titleRow: 2,
  footer: 'Invented',
  breaks: [4]
}
const plain = { widths: [20, 12], heights: [{ row: 0, rows: 1, points: 24 }], tables: [], freezeColumns: 0 }

/**
 * Two documents that are small, with an ornament of each kind, a formula and cells with a name that it calls; `mark` tells
 * one plan from another, of which the later ones are longer.
 */
export function documentsOf(mark: string): SheetDescription[] {
  const trees = Array.from({ length: 3 + mark.charCodeAt(0) - 97 }, (_, index) => [
    `${mark}${index + 1}`,
    index
  ])
  const table = { row: 2, column: 0, rows: trees.length + 1, columns: 2 }
  const numbers = { row: 3, column: 1, rows: trees.length, columns: 1 }
  return [
    {
      ...plain,
      kind: 'cut-plan',
      name: 'Cut plan',
      rows: [
        ['Cut plan'],
        [mark],
        ['Tree', 'Cuts'],
        ...trees,
        ['all', { formula: '=SUM(Invented_cuts)', value: 3 }]
      ],
      formats: [{ area: one, format: { bold: true, size: 16 } }],
      tables: [{ name: 'CutPlan', area: table }],
      freezeRows: 3,
      page,
      rules: [{ area: numbers, takes: { from: 0, to: 9, whole: true }, sentence: 'A number from 0 to 9.' }],
      conditionalLooks: [{ area: numbers, formula: '=$B4>1', format: { bold: true } }],
      charts: [
        {
          area: { row: 0, column: 3, rows: 6, columns: 4 },
          title: 'Cuts',
          alt: 'Cuts',
          labels: { ...numbers, column: 0 },
          series: [{ name: 'Cuts', values: numbers, drawn: 'columns', color: '#335533' }],
          valueTitle: 'Cuts',
          valueFormat: '0'
        }
      ],
      pictures: [picture]
    },
    {
      ...plain,
      kind: 'estimate-working',
      name: 'Estimate working',
      rows: [['Estimate working'], [mark], ...trees],
      formats: [],
      names: [{ name: 'Invented_cuts', area: { row: 2, column: 1, rows: trees.length, columns: 1 } }],
      freezeRows: 0,
      page: { ...page, breaks: [], titleRow: null },
      hidden: true
    }
  ]
}

/** Paints one point. */
export const pointPainter: DrawingPainter = {
  paint: ({ width, height, alt }) => {
    const png = new Uint8Array([137, 80, 78, 71, 13, 10, 26, 10])
    return Promise.resolve({ png, width, height, alt })
  }
}

export interface WritingBook extends InventoryBook {
  source: readonly SheetCells[]
  /** The action under test: the documents of a plan, in the place of the earlier ones. */
  write(documents: SheetDescription[], signal?: AbortSignal): Promise<AppliedSheets | Problem>
  names(): string[]
  idOf(name: string): string
  /** What a sheet holds, in a few characters: cells, formulas and number formats. */
  hash(id: string): string
  /** The names of sheets that are being written. */
  drafts(): string[]
}

/** The inventory on Trees, and a sheet of the user's that looks into the Cut plan. */
export async function startWriting(): Promise<WritingBook> {
  const office = await startWith(metricRows())
  const { book } = office
  const mine = book.addSheet('Mine').id
  fill(office, mine, [
    ['my notes', 12],
    ['total', "='Cut plan'!B4"],
    ["'=1+1", true]
  ])
  office.select({})
  const { sheets: source, problems } = await readInventorySheets('selection', showsInventory)
  if (source.length === 0) throw new Error(problems.map(({ message }) => message).join(' '))
  const sheets = () => book.sheets()
  return {
    ...office,
    source,
    write: (documents, signal) =>
      applySheets(documents, {
        replace: true,
        inventory: ['Trees'],
        source,
        signal,
        painter: pointPainter,
        cleanUpPauses: [0, 0]
      }),
    names: () => sheets().map(({ name }) => name),
    idOf: (name) => sheets().find((sheet) => sheet.name === name)?.id ?? '',
    hash: (id) => {
      const area = book.usedArea(id, false)
      const held = area && [book.formulas(id, area), book.numberFormats(id, area)]
      return createHash('sha256')
        .update(JSON.stringify([area, held]))
        .digest('hex')
        .slice(0, 12)
    },
    drafts: () => {
      const marks = book.names().filter(({ name }) => name.startsWith('Limbwright_draft'))
      return marks.map(({ formula }) => formula)
    }
  }
}

export function sentenceOf(result: AppliedSheets | Problem): string {
  return isProblem(result) ? result.message : (result.missing?.message ?? '')
}
