/** The chart parts of an .xlsx: the order of their elements, their cells and their stored values. */
import { JSDOM } from 'jsdom'
import { chartMarks } from '../../../src/sheets/chartMarks'
import type { SheetChart } from '../../../src/sheets/sheet'
import { chartXml, type FileChart } from '../../../src/file/file-library/chartXml'

const cells: (string | number | null)[][] = [
  ['T01', 0.2, 0.25, 0.8],
  ['T<2> & "3"', 0, null, 0.6]
]
const drawn: SheetChart['series'][number]['drawn'][] = ['line', 'columns', 'points', 'dashed-line']
const forms = drawn.map((each, index) => ({
  name: `Series ${String(index)}`,
  values: { row: 0, column: 1 + (index % 3), rows: 2, columns: 1 },
  drawn: each,
  color: '#2c5a41'
}))
const marks = chartMarks(forms)

const chart: FileChart = {
  area: { row: 5, column: 0, rows: 10, columns: 6 },
  title: 'Dose & allowance',
  alt: 'All in words.',
  valueTitle: 'Share',
  valueFormat: '0%',
  sheet: "Owner's plan",
  series: forms.map((series, index) => ({
    ...series,
    labels: { row: 0, column: 0, rows: 2, columns: 1 },
    mark: marks[index] ?? null
  })),
  cellAt: (row, column) => cells[row]?.[column] ?? null
}

const { document } = new JSDOM(chartXml(chart), { contentType: 'text/xml' }).window
const all = (name: string) => [...document.getElementsByTagName(name)]
const texts = (name: string, within: Element) =>
  [...within.getElementsByTagName(name)].map(({ textContent }) => textContent)

/**
 * The elements that each may hold, in their order. Source: ECMA-376 part 1, annex A.5.1 (dml-chart.xsd) and A.4.1
 * (dml-main.xsd), from memory; only what a chart of ours could hold.
 */
const order: Record<string, string> = {
  'c:chartSpace': 'date1904 lang roundedCorners style clrMapOvr protection chart spPr txPr printSettings',
  'c:chart': 'title autoTitleDeleted view3D plotArea legend plotVisOnly dispBlanksAs',
  'c:title': 'tx layout overlay spPr txPr',
  'c:plotArea': 'layout barChart lineChart catAx valAx dTable spPr',
  'c:barChart': 'barDir grouping varyColors ser dLbls gapWidth overlap serLines axId',
  'c:lineChart': 'grouping varyColors ser dLbls dropLines hiLowLines upDownBars marker smooth axId',
  'c:ser': 'idx order tx spPr invertIfNegative marker dPt dLbls trendline errBars cat val smooth shape',
  'c:catAx':
    'axId scaling delete axPos majorGridlines minorGridlines title numFmt majorTickMark minorTickMark tickLblPos spPr txPr crossAx crosses auto lblAlgn lblOffset noMultiLvlLbl',
  'c:valAx':
    'axId scaling delete axPos majorGridlines minorGridlines title numFmt majorTickMark minorTickMark tickLblPos spPr txPr crossAx crosses crossBetween majorUnit',
  'c:scaling': 'logBase orientation max min',
  'c:legend': 'legendPos legendEntry layout overlay spPr txPr',
  'c:numRef': 'f numCache',
  'c:strRef': 'f strCache',
  'c:numCache': 'formatCode ptCount pt',
  'c:strCache': 'ptCount pt',
  'c:rich': 'bodyPr lstStyle p',
  'c:txPr': 'bodyPr lstStyle p',
  'c:spPr': 'xfrm solidFill ln',
  'a:ln': 'noFill solidFill prstDash round'
}

test('every element stands where its schema expects it', () => {
  let checked = 0
  for (const [name, wanted] of Object.entries(order)) {
    const places = wanted.split(' ')
    for (const element of all(name)) {
      const found = [...element.children].map(({ localName }) => places.indexOf(localName))
      expect([name, found]).toEqual([name, [...found].sort((a, b) => a - b)])
      expect(found).not.toContain(-1)
      checked += 1
    }
  }
  expect(checked).toBeGreaterThan(30)
})

test('columns come before the lines that are drawn over them, each under its own number', () => {
  const numbers = all('c:ser').map((ser) => [
    ser.parentElement!.localName,
    ser.getElementsByTagName('c:idx')[0]!.getAttribute('val'),
    texts('c:v', ser.getElementsByTagName('c:tx')[0]!)[0]
  ])
  expect(numbers).toEqual([
    ['barChart', '1', 'Series 1'],
    ['lineChart', '0', 'Series 0'],
    ['lineChart', '2', 'Series 2'],
    ['lineChart', '3', 'Series 3']
  ])
})

test('each plot refers to the two axes, which cross each other', () => {
  const ids = (name: string, child: string) =>
    [...all(name)[0]!.children]
      .filter(({ tagName }) => tagName === child)
      .map((each) => each.getAttribute('val'))
  const [labels] = ids('c:catAx', 'c:axId')
  const [values] = ids('c:valAx', 'c:axId')
  for (const plot of ['c:barChart', 'c:lineChart']) expect(ids(plot, 'c:axId')).toEqual([labels, values])
  expect(ids('c:catAx', 'c:crossAx')).toEqual([values])
  expect(ids('c:valAx', 'c:crossAx')).toEqual([labels])
})

test('series name their cells and hold what stood in them; an empty cell is a gap', () => {
  const line = all('c:lineChart')[0]!.getElementsByTagName('c:ser')[1]!
  expect(texts('c:f', line)).toEqual(["'Owner''s plan'!$A$1:$A$2", "'Owner''s plan'!$D$1:$D$2"])
  const column = all('c:barChart')[0]!.getElementsByTagName('c:ser')[0]!
  expect(texts('c:v', column.getElementsByTagName('c:cat')[0]!)).toEqual(['T01', 'T<2> & "3"'])
  const cache = column.getElementsByTagName('c:val')[0]!
  expect(texts('c:v', cache)).toEqual(['0.25'])
  expect(cache.getElementsByTagName('c:ptCount')[0]!.getAttribute('val')).toBe('2')
  expect(cache.getElementsByTagName('c:pt')[0]!.getAttribute('idx')).toBe('0')
})

test('lines are told apart by their marks and their dashes, and points have no line', () => {
  const looks = [...all('c:lineChart')[0]!.getElementsByTagName('c:ser')].map((ser) => {
    const own = [...ser.children].find(({ tagName }) => tagName === 'c:spPr')!
    return [
      ser.getElementsByTagName('c:symbol')[0]!.getAttribute('val'),
      own.getElementsByTagName('a:prstDash')[0]?.getAttribute('val') ?? '',
      own.getElementsByTagName('a:noFill').length
    ]
  })
  expect(looks).toEqual([
    ['circle', '', 0],
    ['square', '', 1],
    ['diamond', 'dash', 0]
  ])
})

test('titles say what is shown; a chart of one series has no legend', () => {
  expect(all('a:t').map(({ textContent }) => textContent)).toEqual(['Dose & allowance', 'Share'])
  expect(all('c:legend')).toHaveLength(1)
  expect(chartXml({ ...chart, series: chart.series.slice(0, 1) })).not.toContain('c:legend')
})
