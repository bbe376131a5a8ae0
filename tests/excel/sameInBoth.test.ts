/** What the add-in writes through the real Office library and what the .xlsx writer writes, cell by cell. */
import { noDetails } from '../../src/details/detailsBook'
import { wholeProgram } from '../../src/price/offers'
import { readXlsx, type Workbook } from 'hucre/xlsx'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeDocuments, planDocuments } from '../../src/sheets/describeDocuments'
import { describeStartRates } from '../../src/sheets/rates/ratesSheet'
import { describeRules } from '../../src/sheets/rules/rulesSheet'
import { applySheets } from '../../src/excel/applySheets'
import { isProblem } from '../../src/excel/failures'
import { columnPoints, isScaled, pageScale } from '../../src/sheets/pageBreaks'
import { absoluteAddress } from '../../shared/a1Notation'
import { chartSizes } from '../../src/sheets/chartMarks'
import { undrawnWidth } from '../../src/file/file-library/chartXml'
import { bookOf } from '../../src/file/file-library/unpackBook'
import { filePainter } from '../../src/file/paintDrawing'
import { fileWidth, writeWorkbook } from '../../src/file/writeWorkbook'
import { dateToSerial } from 'hucre'
import { readConditionalFormats, withoutShown } from '../../src/workbench/files/conditionalRules'
import { readValidation } from '../../src/workbench/files/validationRules'
import { cellAddress } from '../../shared/cells'
import { samplePlan } from '../sheets/samplePlan'
import { startWith, type InventoryBook } from './inventorySheet'

let office: InventoryBook
let file: Workbook
const plan = samplePlan()
Object.assign(plan.trees[0]!.tree, { species: '=Red maple' })
Object.assign(plan.trees[1]!.tree, { site: '#N/A' })
Object.assign(plan.trees[2]!.tree, { id: '=T03' })
const documents = [
  ...describeDocuments(planDocuments, plan, wholeProgram(estimatePlan(plan)), {
    ...noDetails,
    client: '=HYPERLINK("x")',
    site: '-1',
    preparedBy: '@them',
    date: '2026-03-02',
    validUntil: '2026-06-30'
  }),
  describeRules(),
  describeStartRates('cm-m')
]

beforeAll(async () => {
  office = await startWith()
  const result = await applySheets(documents, { replace: false, painter: filePainter })
  if (isProblem(result)) throw new Error(result.message)
  file = await readXlsx(await writeWorkbook(documents), { readStyles: true })
})

/** What differs between a sheet of one and of the other, compared cell by cell and expected once: expect() is slow. */
class Differences {
  private compared = 0
  private readonly found: unknown[] = []

  note(row: number, column: number, what: string, found: unknown, expected: unknown): void {
    this.compared++
    if (!Object.is(found, expected))
      this.found.push({ cell: cellAddress(row, column), what, found, expected })
  }

  expectNone(atLeastCompared: number): void {
    expect(this.found).toEqual([])
    expect(this.compared).toBeGreaterThanOrEqual(atLeastCompared)
  }
}

const idOf = (name: string) => office.book.sheets().find((sheet) => sheet.name === name)!.id

describe.each(documents.map((description) => [description.name, description] as const))(
  '%s',
  (name, description) => {
    const rows = description.rows.length
    const columns = description.widths.length
    const area = { row: 0, column: 0, rows, columns }
    const inFile = () => file.sheets.find((sheet) => sheet.name === name)!
    const cellInFile = (row: number, column: number) =>
      inFile().cells?.get(`${String(row)},${String(column)}`)

    test('holds the same values and formulas', () => {
      const formulas = office.book.formulas(idOf(name), area)
      const differences = new Differences()
      for (let row = 0; row < rows; row++)
        for (let column = 0; column < columns; column++) {
          const stored = inFile().rows[row]?.[column] ?? null
          const cell = cellInFile(row, column)
          const value = stored instanceof Date ? dateToSerial(stored) : stored
          const expected = cell?.formula === undefined ? value : `=${cell.formula}`
          const found = formulas[row]![column] ?? null
          differences.note(
            row,
            column,
            'content',
            found === '' ? null : found,
            expected === '' ? null : expected
          )
        }
      differences.expectNone(rows * columns)
    })

    test('has formulas exactly where the description has them, with the engine’s value in the file', () => {
      const differences = new Differences()
      description.rows.forEach((cells, row) => {
        cells.forEach((content, column) => {
          const formula =
            typeof content === 'object' && content !== null && 'formula' in content ? content : null
          const cell = cellInFile(row, column)
          differences.note(row, column, 'formula', cell?.formula, formula?.formula.slice(1))
          if (formula === null) return
          // The file library reads a number in store as the result of the formula, and a text as the value of the cell.
          differences.note(row, column, 'value', cell?.formulaResult ?? cell?.value, formula.value)
        })
      })
      differences.expectNone(description.rows.flat().length)
    })

    test('has the same number formats, fonts, fills and alignment', () => {
      const formats = office.book.numberFormats(idOf(name), area)
      const differences = new Differences()
      for (let row = 0; row < rows; row++)
        for (let column = 0; column < columns; column++) {
          const style = cellInFile(row, column)?.style
          const look = office.book.format(idOf(name), { row, column, rows: 1, columns: 1 })
          const note = (what: string, found: unknown, expected: unknown) =>
            differences.note(row, column, what, found, expected)
          note('fill', shownFill(look.fill), fillOf(style))
          note('bottom edge', look.bottomEdge !== null, style?.border?.bottom !== undefined)
          const content = description.rows[row]![column] ?? null
          // On a blank cell the file has only the looks that show.
          if (content === null || content === '') continue
          const guarded = typeof content === 'string' && /^\s*[=+\-@]/.test(content)
          if (!guarded) note('number format', formats[row]![column], style?.numFmt ?? 'General')
          note('bold', look.bold ?? false, style?.font?.bold ?? false)
          note('wrap', look.wrap ?? false, style?.alignment?.wrapText ?? false)
        }
      differences.expectNone(rows * columns)
    })

    test('has the same looks that follow the cells, each in the place that the description gives it', () => {
      const inBook = office.book.conditionalFormats(idOf(name)).map(({ areas, formula, look }) => {
        return { areas, formula, look: upperColors(look) }
      })
      const { rules } = bookOf({ sheets: [inFile()] }).sheets[0]!
      const inTheFile = readConditionalFormats(rules).map(({ areas, formula, look }) => {
        return { areas, formula, look: upperColors(look) }
      })
      expect(withoutShown(rules)).toEqual([])
      expect(inBook).toEqual(inTheFile)
      const described = (description.conditionalLooks ?? []).map(({ area, formula, format }) => {
        return { areas: [area], formula, look: upperColors(format) }
      })
      expect(inBook).toEqual(described.reverse())
    })

    test('takes the same in its cells, and says the same where it does not', () => {
      const inBook = office.book.validations(idOf(name)).map(({ area, rule, texts }) => {
        const { message, title } = texts!.errorAlert as { message: string; title: string }
        return { area, rule: plainly(rule), message, title }
      })
      const inTheFile = (inFile().dataValidations ?? []).flatMap((validation) =>
        readValidation(validation).map(({ area, rule }) => {
          const { errorMessage: message, errorTitle: title } = validation
          return { area, rule: plainly(rule), message, title }
        })
      )
      expect(inBook).toEqual(inTheFile)
      expect(inBook).toHaveLength(description.rules?.length ?? 0)
    })

    test('has the same pictures at the same place, with the same words', () => {
      const id = idOf(name)
      const edges = (size: (index: number) => number, count: number) =>
        Array.from({ length: count + 1 }, (_, index) => index).map((index) =>
          Array.from({ length: index }, (__, before) => size(before)).reduce((sum, each) => sum + each, 0)
        )
      const lefts = edges((column) => office.book.columnWidth(id, column), columns)
      const tops = edges((row) => office.book.rowHeight(id, row), rows)
      const inBook = office.book.pictures(id).map(({ left, top, alt, image }) => {
        return { left, top, alt, image }
      })
      const inTheFile = (inFile().images ?? []).map(({ anchor, altText, data }) => ({
        left: lefts[anchor.from.col],
        top: tops[anchor.from.row],
        alt: altText,
        image: Buffer.from(data).toString('base64')
      }))
      expect(inBook).toEqual(inTheFile)
      expect(inBook).toHaveLength(description.pictures?.length ?? 0)
    })

    test('has the same charts of the same cells, at the same place and told apart in the same way', () => {
      const inBook = office.book.charts(idOf(name)).map((chart) => ({
        title: chart.title,
        area: chart.area,
        legend: chart.legend ? chart.legendPosition.toLowerCase() : false,
        valueTitle: chart.valueTitle,
        valueFormat: chart.valueFormat,
        from: chart.valueMinimum,
        gap: chart.series.find(({ type }) => type === 'ColumnClustered')?.gapWidth,
        series: chart.series.map((series) => ({
          name: series.name,
          kind: series.type === 'ColumnClustered' ? 'bar' : 'line',
          values: series.values && absoluteAddress(name, series.values),
          labels: series.labels && absoluteAddress(name, series.labels),
          color: (series.type === 'ColumnClustered' ? series.fill : series.line)!.slice(1),
          ...(series.type === 'ColumnClustered'
            ? { line: null, mark: null }
            : {
                line: series.lineStyle,
                mark: [series.marker.toLowerCase(), series.markerSize, series.markerFill!.slice(1)]
              })
        }))
      }))
      const inTheFile = (inFile().charts ?? []).map((chart) => ({
        title: chart.title,
        area: betweenCorners(chart.anchor!),
        legend: chart.legend ?? false,
        valueTitle: chart.axes?.y?.title,
        valueFormat: chart.axes?.y?.numberFormat?.formatCode,
        from: chart.axes?.y?.scale?.min,
        gap: chart.gapWidth,
        series: [...chart.series!]
          .sort((a, b) => a.index - b.index)
          .map((series) => ({
            name: series.name,
            kind: series.kind,
            values: series.valuesRef,
            labels: series.categoriesRef,
            color: series.color,
            line: series.kind === 'bar' ? null : lineOf(series.stroke),
            mark:
              series.marker === undefined
                ? null
                : [series.marker.symbol, series.marker.size, series.marker.fill]
          }))
      }))
      expect(inBook).toEqual(inTheFile)
      expect(inBook).toHaveLength(description.charts?.length ?? 0)
      // The Excel API has no member for a chart's words, so only the file carries them.
      expect((inFile().charts ?? []).map(({ altText }) => altText)).toEqual(
        (description.charts ?? []).map(({ alt }) => alt)
      )
    })

    test('has the same tables, frozen columns, widths, heights and page', () => {
      const id = idOf(name)
      const tables = office.book.tables().filter(({ sheetId }) => sheetId === id)
      expect(tables.map((table) => [table.name, table.style, table.banded])).toEqual(
        (inFile().tables ?? []).map((table) => [table.name, table.style, table.showRowStripes])
      )
      expect(tables.map((table) => table.area)).toEqual(description.tables.map((table) => table.area))
      expect(office.book.frozen(id)).toEqual({ rows: 0, columns: inFile().freezePane?.columns ?? 0 })
      expect(inFile().freezePane?.columns ?? 0).toBe(description.freezeColumns)
      description.widths.forEach((width, column) => {
        expect(office.book.columnWidth(id, column)).toBeCloseTo(columnPoints(width), 6)
        expect(inFile().columns![column]!.width).toBeCloseTo(fileWidth(width), 6)
      })
      for (const { row, points } of description.heights) {
        expect(office.book.rowHeight(id, row)).toBe(points)
        expect(inFile().rowDefs!.get(row)!.height).toBe(points)
      }
      const page = office.book.page(id)
      const setup = inFile().pageSetup!
      expect(page.orientation.toLowerCase()).toBe(setup.orientation)
      expect(page.paperSize.toLowerCase()).toBe(setup.paperSize)
      // Page breaks of its own are kept at a scale; otherwise the columns are fitted to one page.
      const broken = isScaled(description.page)
      const scale = pageScale(description.page, description.widths)
      expect([page.scale, page.fitToWidth, page.fitToHeight]).toEqual(
        broken ? [scale, null, null] : [null, 1, null]
      )
      expect([setup.scale, setup.fitToPage, setup.fitToWidth, setup.fitToHeight]).toEqual(
        broken ? [scale, undefined, undefined, undefined] : [undefined, true, 1, 0]
      )
      const { rows = area.rows, columns: across = columns } = description.page
      const printed = { ...area, rows, columns: across }
      if (description.hidden === true)
        expect([page.printArea ?? null, setup.printArea]).toEqual([null, undefined])
      else {
        expect(absoluteAddress(name, printed)).toContain(setup.printArea)
        expect(page.printArea).toBe(setup.printArea!.replaceAll('$', ''))
      }
      expect(page.titleRows).toBe(setup.printTitlesRow ?? null)
      expect(page.breaks ?? []).toEqual((inFile().rowBreaks ?? []).map((row) => row + 1))
      expect(page.breaks ?? []).toEqual(description.page.breaks ?? [])
      expect(inFile().headerFooter!.oddFooter).toBe(`&L${page.footerLeft}&R${page.footerRight}`)
      expect(office.book.gridlines(id)).toBe(inFile().view!.showGridLines)
    })
  }
)

test('the names by which both are found again are the same', () => {
  const names = (list: { name: string; at: string }[]) =>
    list.filter(({ name }) => name.startsWith('Limbwright_')).sort((a, b) => a.name.localeCompare(b.name))
  const inBook = office.book.names().map(({ name, formula }) => ({ name, at: formula.replace(/[=']/g, '') }))
  const inFile = file.namedRanges!.map(({ name, range }) => ({ name, at: range.replaceAll("'", '') }))
  expect(names(inBook)).toEqual(names(inFile))
  expect(names(inBook)).toHaveLength(documents.length)
})

/** The sheets that follow the cells, and those whose cells are checked, are among those compared. */
test('looks that follow the cells are on three sheets, checks of what is typed on four', () => {
  const having = (part: 'conditionalLooks' | 'rules') =>
    documents.filter((description) => (description[part] ?? []).length > 0).map(({ kind }) => kind)
  expect(having('conditionalLooks')).toEqual(['cut-plan', 'rules', 'rates'])
  expect(having('rules')).toEqual(['estimate', 'work-order', 'rules', 'rates'])
})

function upperColors(look: object): object {
  return Object.fromEntries(
    Object.entries(look).map(([part, value]: [string, unknown]) => [
      part,
      typeof value === 'string' ? value.toUpperCase() : value
    ])
  )
}

/** A rule with its numbers as texts, as a file has them. */
function plainly(rule: unknown): unknown {
  return JSON.parse(JSON.stringify(rule), (_key, value: unknown) =>
    typeof value === 'number' ? String(value) : value
  )
}

test('some of the documents have charts', () => {
  const counts = documents.map(({ kind, charts = [] }) => [kind, charts.length])
  expect(Object.fromEntries(counts)).toMatchObject({ 'cut-plan': 2, estimate: 1 })
})

/** The cells between the corners of a chart, of which the second lies just outside. */
function betweenCorners({ from, to }: { from: Corner; to?: Corner }) {
  return { row: from.row, column: from.col, rows: to!.row - from.row, columns: to!.col - from.col }
}

interface Corner {
  row: number
  col: number
}

/** A line of the least width is one that is not drawn. */
function lineOf(stroke: { width?: number; dash?: string } | undefined): string {
  if (stroke?.width === undrawnWidth) return 'None'
  expect(stroke?.width).toBe(chartSizes.line)
  return stroke?.dash === undefined ? 'Continuous' : 'Dash'
}

/** The memory book tells a cell without a fill as white. */
function shownFill(fill: string | null): string {
  const color = (fill ?? '#FFFFFF').toUpperCase()
  return color === '#FFFFFF' ? 'NONE' : color
}

/** A cell without a fill is "NONE". */
function fillOf(style: { fill?: unknown } | undefined): string {
  const fill = style?.fill as { pattern?: string; fgColor?: { rgb?: string } } | undefined
  const rgb = fill?.pattern === 'solid' ? fill.fgColor?.rgb : undefined
  return rgb === undefined ? 'NONE' : `#${rgb.slice(-6).toUpperCase()}`
}
