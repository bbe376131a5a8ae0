import { crc32 } from 'node:zlib'
import { readXlsx, writeXlsx } from 'hucre/xlsx'
import { replaceParts } from '../../src/file/zipParts'

const book = () =>
  writeXlsx({
    sheets: [{ name: 'Trees', rows: [['T01', 12.5]] }],
    namedRanges: [{ name: 'A_1', range: 'Trees!$A$1' }]
  })

const shared = `<?xml version="1.0"?><sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><si><t>Eiche – ×</t></si></sst>`

test('a part is replaced and every other part stays', async () => {
  const before = await readXlsx(await book())
  const after = await readXlsx(replaceParts(await book(), new Map([['xl/sharedStrings.xml', shared]])))
  expect(before.sheets[0]!.rows).toEqual([['T01', 12.5]])
  expect(after.sheets[0]!.rows).toEqual([['Eiche – ×', 12.5]])
  expect(after.namedRanges).toEqual(before.namedRanges)
})

test('the replaced part is stored with its size and checksum in both places', async () => {
  const zip = Buffer.from(replaceParts(await book(), new Map([['xl/sharedStrings.xml', shared]])))
  const contents = Buffer.from(shared)
  const at = zip.indexOf(contents)
  const head = at - 30 - 'xl/sharedStrings.xml'.length
  const record = zip.lastIndexOf('xl/sharedStrings.xml') - 46
  for (const [start, method] of [
    [head, 8],
    [record, 10]
  ] as const) {
    expect(zip.readUInt16LE(start + method)).toBe(0)
    expect(zip.readUInt32LE(start + method + 6)).toBe(crc32(contents))
    expect(zip.readUInt32LE(start + method + 10)).toBe(contents.length)
    expect(zip.readUInt32LE(start + method + 14)).toBe(contents.length)
  }
  expect(zip.readUInt32LE(record + 42)).toBe(head)
})

test('without parts to replace, the file stays byte for byte', async () => {
  const zip = await book()
  expect(Buffer.from(replaceParts(zip, new Map())).equals(Buffer.from(zip))).toBe(true)
})

test('a part that the file lacks, and bytes that are no ZIP file, are errors', async () => {
  const zip = await book()
  expect(() => replaceParts(zip, new Map([['xl/charts/chart1.xml', '<a/>']]))).toThrow(/no part xl\/charts/)
  expect(() => replaceParts(new Uint8Array(100), new Map())).toThrow(/unlike a ZIP/)
})
