import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import JSZip from 'jszip'
import { readXlsx } from 'hucre/xlsx'
import { packBook } from '../../src/file/file-library/packBook'
import { settingsOf } from '../../src/file/file-library/settingsPart'
import { unpackBook } from '../../src/file/file-library/unpackBook'
import { unpackValues } from '../../src/file/file-library/unpackValues'
import { answersKey, keptText } from '../../src/inventory/keptAnswers'
import { commandRun } from './commandRun'

const rows = [
  ['Tree', 'Species', 'Height (ft)', 'Limb', 'Whatsit', 'Stem dia (in)', 'Origin (ft)', 'Tip (ft)'],
  ['T1', 'Red oak', 40, '1', 3, 6, 8, 30],
  ['T1', 'Red oak', 40, '2', 2, 6, 9, 32]
]

function bytesWith(settings: ReadonlyMap<string, string>): Promise<Uint8Array> {
  const plain = { freeze: { rows: 0, columns: 0 }, gridlines: true, page: {}, footer: '' }
  return packBook({ sheets: [{ name: 'Limbs', rows, ...plain }], settings })
}

const odd = new Map([
  ['a & "b"', '<x> & {"y": "é ’ ☃"}'],
  ['plain', '1']
])

describe('the part of an .xlsx that keeps answers', () => {
  test('comes back word for word, by both readers', async () => {
    const bytes = await bytesWith(odd)
    expect((await unpackBook(bytes)).settings).toEqual(odd)
    const values = await unpackValues(bytes)
    if ('unreadable' in values) throw new Error(values.unreadable)
    expect(values.settings).toEqual(odd)
  })

  test('is named in the list of types and by the workbook, and the workbook reads as before', async () => {
    const bytes = await bytesWith(odd)
    const zip = await JSZip.loadAsync(bytes)
    const text = (name: string) => zip.file(name)!.async('string')
    expect(await text('[Content_Types].xml')).toContain('PartName="/customXml/itemProps1.xml"')
    expect(await text('xl/_rels/workbook.xml.rels')).toContain('Target="../customXml/item1.xml"')
    expect((await readXlsx(bytes)).sheets[0]!.rows).toEqual(rows)
  })

  test('is not there where nothing is kept', async () => {
    const zip = await JSZip.loadAsync(await bytesWith(new Map()))
    expect(Object.keys(zip.files).filter((name) => name.startsWith('customXml'))).toEqual([])
  })

  test('a part of somebody else’s with the same tags is passed over', async () => {
    const zip = await JSZip.loadAsync(await bytesWith(odd))
    const own = await zip.file('customXml/item1.xml')!.async('string')
    zip.file('customXml/item1.xml', own.replace('urn:limbwright:settings', 'urn:somebody:else'))
    const bytes = await zip.generateAsync({ type: 'uint8array' })
    expect(await settingsOf(bytes)).toEqual(new Map())
  })
})

describe('planning a file that keeps answers', () => {
  let folder: string
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'limbwright-'))
  })
  afterAll(() => {
    rmSync(folder, { recursive: true })
  })

  const whatsit = async (kept: string | null, ...more: string[]) => {
    const settings = new Map(kept === null ? [] : [[answersKey, kept] as const])
    writeFileSync(join(folder, 'kept.xlsx'), await bytesWith(settings))
    const { out } = await commandRun(folder, '2031-03-02', ['kept.xlsx', '--json', ...more])
    const { columns, problems } = JSON.parse(out) as {
      columns: { header: string; field: string | null; unit: string | null; confidence: string }[]
      problems: { code: string }[]
    }
    const { field, unit, confidence } = columns.find(({ header }) => header === 'Whatsit')!
    return { field, unit, confidence, codes: problems.map(({ code }) => code) }
  }
  const answer = keptText({ answers: [{ header: 'whatsit', field: 'diameter', unit: 'in' }] })

  test('finds them again by header', async () => {
    expect(await whatsit(null)).toMatchObject({ field: null })
    expect(await whatsit(answer)).toMatchObject({ field: 'diameter', unit: 'in', confidence: 'chosen' })
  })

  test('--column wins over them', async () => {
    expect(await whatsit(answer, '--column', 'Whatsit=angle')).toMatchObject({ field: 'angle' })
    expect(await whatsit(answer, '--column', 'E=-')).toMatchObject({ field: null, confidence: 'chosen' })
    expect(await whatsit(answer, '--column', 'E=(mm)')).toMatchObject({ field: 'diameter', unit: 'mm' })
  })

  test('what was told of a column by its letters is kept by its header, as columns move', async () => {
    writeFileSync(join(folder, 'survey.xlsx'), await bytesWith(new Map()))
    const told = ['--column', 'E=limb diameter (in)', '--column', 'H=tip (ft)', '--out', 'plan.xlsx']
    const { code } = await commandRun(folder, '2031-03-02', ['survey.xlsx', ...told])
    expect(code).toBe(0)
    const settings = await settingsOf(new Uint8Array(readFileSync(join(folder, 'plan.xlsx'))))
    expect(JSON.parse(settings.get(answersKey)!)).toMatchObject({
      answers: [
        { header: 'Whatsit', field: 'diameter', unit: 'in' },
        { header: 'Tip (ft)', field: 'tip', unit: 'ft' }
      ]
    })
    expect(settings.get(answersKey)).not.toContain('"column"')
  })

  test('finds those that Excel itself kept, as MS-OWEXML lays them down', async () => {
    const zip = await JSZip.loadAsync(await bytesWith(new Map([[answersKey, '{"version":1,']])))
    const value = JSON.stringify(answer).replaceAll('&', '&amp;').replaceAll('"', '&quot;')
    const we = 'http://schemas.microsoft.com/office/webextensions/webextension/2010/11'
    zip.file(
      'xl/webextensions/webextension1.xml',
      `<we:webextension xmlns:we="${we}" id="{1}"><we:properties><we:property name="Office.AutoShowTaskpaneWithDocument" value="true"/><we:property name="${answersKey}" value="${value}"/></we:properties></we:webextension>`
    )
    const bytes = await zip.generateAsync({ type: 'uint8array' })
    expect(await settingsOf(bytes)).toEqual(new Map([[answersKey, answer]]))
    writeFileSync(join(folder, 'excel.xlsx'), bytes)
    const { out } = await commandRun(folder, '2031-03-02', ['excel.xlsx', '--json'])
    expect(out).toMatch(/"header": "Whatsit",\s+"field": "diameter"/)
  })

  test('says where they are damaged, and plans without them', async () => {
    const { field, codes } = await whatsit('{"version":1,')
    expect(field).toBeNull()
    expect(codes).toContain('answers-unread')
  })
})
