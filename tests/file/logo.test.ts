/** A logo on every document of a written workbook: from a file, from the Job details sheet, and what cannot be used. */
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readXlsx, writeXlsx } from 'hucre/xlsx'
import { mostBytes } from '../../shared/pictures/storedPicture'
import { describeDetails } from '../../src/sheets/details/detailsSheet'
import { ownName, titles } from '../../src/sheets/ownSheets'
import { sampleInventory } from '../../src/file/sampleInventory'
import { inventedJpeg, inventedPng } from '../pictures/invented'
import { commandRun } from './commandRun'

const documents = ['Cut plan', 'Estimate', 'Client report', 'Work order', 'Round sheet', 'Specification']
const today = '2026-03-02'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'limbwright-head-'))
})

const run = (...args: string[]) => commandRun(folder, today, ['--date', today, ...args])

const given = (name: string, details: object): void => {
  writeFileSync(join(folder, name), JSON.stringify(details))
}

async function sheetsOf(name: string) {
  const { sheets } = await readXlsx(readFileSync(join(folder, name)))
  return new Map(sheets.map((sheet) => [sheet.name, sheet.images ?? []]))
}

/** The logos on the documents of a workbook: how wide and high, and in which row. */
async function logosOf(name: string) {
  const sheets = await sheetsOf(name)
  return documents.map((title) => {
    const logos = sheets.get(title)!.filter(({ altText }) => altText?.startsWith('Logo'))
    return [
      title,
      logos.map(({ width, height, anchor }) => ({ width, height, row: anchor.from.row }))
    ] as const
  })
}

/** An inventory with a Job details sheet on which pictures stand. */
async function withPictures(
  images: { data: Uint8Array; type: 'png' | 'jpeg' | 'gif'; row: number }[]
): Promise<void> {
  const { rows } = describeDetails('in-ft')
  const cells = rows.map((row) => row.map((cell) => (typeof cell === 'object' ? null : cell)))
  const sheet = {
    name: titles['job-details'],
    rows: cells,
    images: images.map(({ row, ...image }) => ({
      ...image,
      anchor: { from: { row, col: 1 } },
      width: 90,
      height: 45
    }))
  }
  writeFileSync(
    join(folder, 'trees.xlsx'),
    await writeXlsx({
      sheets: [{ name: 'Trees', rows: sampleInventory }, sheet],
      namedRanges: [{ name: ownName('job-details', 1), range: `'${sheet.name}'!$A$1` }]
    })
  )
}

test('a logo named in --details, relative to that file, stands in every letterhead in its proportions', async () => {
  writeFileSync(join(folder, 'logo.png'), inventedPng(300, 60))
  given('job.json', { company: 'Elmgate', logo: 'logo.png' })
  expect(await run('--details', 'job.json', '--out', 'plan.xlsx')).toMatchObject({ code: 0 })
  for (const [title, logos] of await logosOf('plan.xlsx')) {
    expect([title, logos.length]).toEqual([title, 1])
    const { width, height, row } = logos[0]!
    expect(Math.abs(width! / height! - 5)).toBeLessThan(0.2)
    expect([title, row < 12]).toEqual([title, true])
  }
  // The workbook carries the logo itself: it can be planned again without the file.
  const [own] = (await sheetsOf('plan.xlsx')).get('Job details')!
  expect(Buffer.compare(own!.data, inventedPng(300, 60))).toBe(0)
  expect(await run('plan.xlsx', '--out', 'again.xlsx')).toMatchObject({ code: 0 })
  expect(await logosOf('again.xlsx')).toEqual(await logosOf('plan.xlsx'))
})

test('the picture on the Job details sheet is the logo, and stays where it was', async () => {
  await withPictures([{ data: inventedJpeg, type: 'jpeg', row: 4 }])
  const { code, out } = await run('trees.xlsx', '--out', 'plan.xlsx')
  expect([code, out.includes('logo')]).toEqual([0, false])
  for (const [title, logos] of await logosOf('plan.xlsx')) expect([title, logos.length]).toEqual([title, 1])
  const [own] = (await sheetsOf('plan.xlsx')).get('Job details')!
  expect(own).toMatchObject({ type: 'jpeg', width: 90, height: 45, anchor: { from: { row: 4, col: 1 } } })
  expect(Buffer.compare(own!.data, inventedJpeg)).toBe(0)
})

test('of several pictures the highest is the logo, which is told, and all stay', async () => {
  await withPictures([
    { data: inventedPng(10, 40), type: 'png', row: 20 },
    { data: inventedPng(40, 10), type: 'png', row: 2 }
  ])
  const { out } = await run('trees.xlsx', '--out', 'plan.xlsx')
  expect(out).toContain('has 2 pictures; the one that stands highest is the logo')
  for (const [, [logo]] of await logosOf('plan.xlsx')) expect(logo!.width).toBeGreaterThan(logo!.height! * 3)
  expect((await sheetsOf('plan.xlsx')).get('Job details')).toHaveLength(2)
})

test('without a logo no document has one, and none is missed', async () => {
  const { out } = await run('--out', 'plan.xlsx')
  expect(out).not.toContain('logo')
  for (const [title, logos] of await logosOf('plan.xlsx')) expect([title, logos]).toEqual([title, []])
})

test.each<[string, Uint8Array, RegExp]>([
  ['cut short', inventedPng(90, 90).subarray(0, 60), /is damaged/],
  ['another kind', new Uint8Array(Buffer.from('GIF89a')), /is neither PNG nor JPEG/],
  ['of 20 MB', new Uint8Array(20 * 1024 * 1024), /has more than 15 MB/],
  [
    '20,000 pixels wide',
    inventedPng(9, 9, [0, 0, 0], { width: 20_000, height: 9 }),
    /10,000 pixels on a side/
  ]
])(
  'a logo %s is told in one sentence, and the documents are written without it',
  async (_what, bytes, why) => {
    writeFileSync(join(folder, 'logo.png'), bytes)
    given('job.json', { logo: 'logo.png' })
    const { code, out } = await run('--details', 'job.json', '--out', 'plan.xlsx')
    expect(code).toBe(0)
    expect(out.match(/The logo logo\.png/g)).toHaveLength(1)
    expect(out).toMatch(why)
    for (const [title, logos] of await logosOf('plan.xlsx')) expect([title, logos]).toEqual([title, []])
  }
)

test('a damaged or large picture on the sheet is told as well', async () => {
  await withPictures([{ data: inventedPng(90, 90).subarray(0, 60), type: 'png', row: 3 }])
  expect((await run('trees.xlsx', '--out', 'plan.xlsx')).out).toContain(
    'The logo on the sheet Job details is damaged'
  )
  await withPictures([{ data: new Uint8Array(mostBytes + 1), type: 'png', row: 3 }])
  expect((await run('trees.xlsx', '--out', 'b.xlsx')).out).toContain(
    'The logo on the sheet Job details has more than 15 MB'
  )
})

test('a logo that is not there is told; a key that is no text is refused', async () => {
  given('job.json', { logo: 'nowhere.png' })
  expect((await run('--details', 'job.json')).out).toContain('The logo nowhere.png is not there')
  given('job.json', { logo: 'https://example.com/logo.png' })
  expect((await run('--details', 'job.json')).out).toContain('is an address and no file')
  given('job.json', { logo: { file: 'logo.png' } })
  const { code, failures } = await run('--details', 'job.json')
  expect([code, failures[0]]).toEqual([2, expect.stringContaining('gives “logo” no single value')])
})
