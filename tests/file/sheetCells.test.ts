/** The two ways cells take into a file must come out as the description says, whichever of them a cell takes. */
import fc from 'fast-check'
import { readXlsx } from 'hucre/xlsx'
import type { Area } from '../../shared/cells'
import type { Content, Format, SheetDescription } from '../../src/sheets/sheet'
import { sheetCells } from '../../src/file/sheetCells'
import { writeWorkbook } from '../../src/file/writeWorkbook'

const columns = 4
const rows = 6

const content: fc.Arbitrary<Content> = fc.constantFrom<Content>(
  null,
  null,
  '',
  'oak',
  7,
  2.5,
  true,
  '=1+1',
  '#N/A',
  { date: 45000 },
  { formula: '=1+1', value: 2 }
)
const format: fc.Arbitrary<Format> = fc.constantFrom<Format>(
  { size: 10 },
  { bold: true },
  { bold: false, wrap: true },
  { fill: '#ffeecc' },
  { underline: '#112233' },
  { numberFormat: '0.00', align: 'right' }
)
const area: fc.Arbitrary<Area> = fc
  .tuple(
    fc.nat(rows - 1),
    fc.nat(columns - 1),
    fc.integer({ min: 1, max: rows }),
    fc.integer({ min: 1, max: columns })
  )
  .map(([row, column, down, across]) => ({
    row,
    column,
    rows: Math.min(down, rows - row),
    columns: Math.min(across, columns - column)
  }))

function described(contents: Content[][], formats: SheetDescription['formats']): SheetDescription {
  return {
    kind: 'cut-plan',
    name: 'Sheet',
    rows: contents,
    formats,
    tables: [],
    widths: Array<number>(columns).fill(10),
    heights: [],
    freezeRows: 0,
    freezeColumns: 0,
    page: { orientation: 'portrait', paper: 'a4', titleRow: null, footer: '' }
  }
}

/** All formats of a cell one over the other; the line below an area only in its last row. */
function lookOf({ formats }: SheetDescription, row: number, column: number): Format {
  let look: Format = {}
  for (const { area: at, format: over } of formats) {
    const down = row - at.row
    const across = column - at.column
    if (down < 0 || down >= at.rows || across < 0 || across >= at.columns) continue
    const { underline, ...rest } = over
    look = { ...look, ...rest }
    if (underline !== undefined && down === at.rows - 1) look.underline = underline
  }
  return look
}

async function written(description: SheetDescription) {
  const file = await writeWorkbook([description])
  return (await readXlsx(file, { readStyles: true })).sheets[0]!
}

describe('the cells of a file', () => {
  it('have the contents and looks of the description', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.array(content, { maxLength: columns }), { minLength: rows, maxLength: rows }),
        fc.array(fc.record({ area, format }), { maxLength: 8 }),
        async (contents, formats) => {
          const description = described(contents, formats)
          const sheet = await written(description)
          for (let row = 0; row < rows; row++)
            for (let column = 0; column < columns; column++) {
              const wanted = contents[row]![column] ?? null
              const cell = sheet.cells?.get(`${String(row)},${String(column)}`)
              const look = lookOf(description, row, column)
              expect(cell?.style?.fill !== undefined).toBe(look.fill !== undefined)
              expect(cell?.style?.border?.bottom !== undefined).toBe(look.underline !== undefined)
              if (wanted === null || wanted === '') {
                expect(sheet.rows[row]?.[column] ?? null).toBeNull()
                continue
              }
              const formula =
                typeof wanted === 'object' && 'formula' in wanted ? wanted.formula.slice(1) : undefined
              expect(cell?.formula).toBe(formula)
              if (typeof wanted !== 'object') expect(sheet.rows[row]?.[column]).toBe(wanted)
              expect(cell?.style?.font?.bold ?? false).toBe(look.bold ?? false)
              expect(cell?.style?.alignment?.wrapText ?? false).toBe(look.wrap ?? false)
              expect(cell?.style?.numFmt ?? 'General').toBe(
                wanted === '=1+1' ? '@' : (look.numberFormat ?? 'General')
              )
            }
        }
      ),
      { numRuns: 150 }
    )
  })

  it('go by row unless they need words about them', () => {
    const bold = [{ area: { row: 0, column: 0, rows: 3, columns: 2 }, format: { bold: true } }]
    const {
      rows: values,
      looks,
      cells
    } = sheetCells(
      described(
        [
          ['a', 1],
          ['b', 2],
          ['c', { formula: '=1', value: 1 }]
        ],
        bold
      )
    )
    expect(values.map((row) => row.slice(0, 2))).toEqual([
      ['a', 1],
      ['b', 2],
      ['c', null]
    ])
    expect(looks[2]).toBe(looks[0])
    expect([...cells.keys()]).toEqual(['2,1'])
  })
})
