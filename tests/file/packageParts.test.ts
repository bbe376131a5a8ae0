/** What an .xlsx of ours holds, part by part, whatever the names in it. */
import { JSDOM } from 'jsdom'
import JSZip from 'jszip'
import { longestAltText } from '../../src/sheets/typedText'
import { describeDocuments, planDocuments } from '../../src/sheets/describeDocuments'
import { firstVisit } from '../../src/price/offers'
import { estimatePlan } from '../../src/price/estimatePlan'
import { sampleInventory } from '../../src/file/sampleInventory'
import { writeWorkbook } from '../../src/file/writeWorkbook'
import { planOf } from '../sheets/samplePlan'

/** Characters that XML forbids or that mean something in it, and a name far too long. */
const oddNames = ['\ufffe\uffff', '<T1> & "T2" ]]>', "=1+1'", 'Дуб 橡树 🌳', 'long '.repeat(2000)]

let parts: Map<string, string>
beforeAll(async () => {
  const rows = sampleInventory.map((row, at) =>
    row.map((cell, column) =>
      at > 0 && column < 2 && typeof cell === 'string' ? `${cell} ${oddNames[at % oddNames.length]!}` : cell
    )
  )
  const plan = planOf(rows)
  const file = await writeWorkbook(describeDocuments(planDocuments, plan, firstVisit(estimatePlan(plan))))
  const zip = await JSZip.loadAsync(file)
  const texts = Object.values(zip.files).map(
    async (entry) =>
      [entry.name, /\.(xml|rels)$/.test(entry.name) ? await entry.async('string') : ''] as const
  )
  parts = new Map(await Promise.all(texts))
}, 60_000)

test('no entry is a folder: an .xlsx has parts only (ECMA-376 part 2)', () => {
  expect([...parts.keys()].filter((name) => name.endsWith('/'))).toEqual([])
})

test('every part is well-formed and holds no character that XML forbids (XML 1.0, 2.2)', () => {
  const { DOMParser } = new JSDOM('').window
  let read = 0
  for (const [name, xml] of parts) {
    if (xml === '') continue
    const root = new DOMParser().parseFromString(xml, 'application/xml').documentElement
    expect([name, root.nodeName === 'parsererror']).toEqual([name, false])
    expect([name, /[\ufffe\uffff]/.test(xml)]).toEqual([name, false])
    read += 1
  }
  expect(read).toBeGreaterThan(20)
})

test('the words for a picture or chart are cut at their end, not left to run on', () => {
  const words = [...parts.values()].flatMap((xml) =>
    [...xml.matchAll(/descr="([^"]*)"/g)].map(([, text = '']) => text.replace(/&\w+;/g, '.'))
  )
  expect(words.length).toBeGreaterThan(5)
  expect(Math.max(...words.map((text) => text.length))).toBeLessThanOrEqual(longestAltText)
  expect(words.some((text) => text.endsWith('…'))).toBe(true)
})

test('each document counts its pages from 1, also where the workbook is printed as one', () => {
  const setups = [...parts].flatMap(([name, xml]) =>
    name.startsWith('xl/worksheets/sheet') ? (/<pageSetup [^>]*>/.exec(xml) ?? []) : []
  )
  expect(setups.length).toBeGreaterThan(5)
  for (const setup of setups) {
    expect(setup).toContain('firstPageNumber="1"')
    expect(setup).toContain('useFirstPageNumber="1"')
  }
})
