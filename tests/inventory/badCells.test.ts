/** Inventories with bad cells, each over the whole path: read, planned, priced, described, drawn, written to .xlsx. */
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readXlsx } from 'hucre/xlsx'
import { readCsv } from '../../src/file/csvFile'
import { commandRun } from '../file/commandRun'
import { sampleInventory } from '../../src/file/sampleInventory'
import { wholePath } from './wholePath'

const folder = join(__dirname, 'bad')
const pathOf = (name: string) => wholePath(readCsv(readFileSync(join(folder, `${name}.csv`), 'utf8')))
const messagesOf = ({ plan }: ReturnType<typeof pathOf>, cell: string) =>
  plan.problems.filter((problem) => problem.cell === cell).map(({ message }) => message)

describe('an inventory with bad cells', () => {
  test.each(readdirSync(folder).map((file) => file.replace('.csv', '')))(
    '%s: the rest is planned, and nothing that is no number is printed or drawn',
    (name) => {
      const { plan, faults } = pathOf(name)
      expect(faults).toEqual([])
      expect(plan.trees.every(({ visits }) => visits.length > 0)).toBe(true)
    }
  )

  test('is written to a file with every document', async () => {
    const out = join(mkdtempSync(join(tmpdir(), 'bad-')), 'plan.xlsx')
    const file = join(folder, 'crown-base-with-question-mark.csv')
    const { code, failures } = await commandRun(folder, '2026-03-01', [file, '--out', out])
    expect([code, failures]).toEqual([0, []])
    const { sheets } = await readXlsx(readFileSync(out))
    expect(sheets.map(({ name }) => name)).toContain('Client report')
  })
})

describe('a crown base that cannot be read', () => {
  test.each([
    ['crown-base-with-question-mark', '“8ft??”, which is not a number; it was left out'],
    ['crown-base-low', '“low”, which is not a number; it was left out'],
    ['crown-base-negative', 'is -8; it cannot be below 0; it was left out'],
    ['crown-base-error', 'the spreadsheet error #N/A; it was left out']
  ])('%s: is reported once, and the lowest of the limbs stands for it', (name, says) => {
    const path = pathOf(name)
    const messages = messagesOf(path, 'Survey!C2')
    expect(messages.filter((message) => message.includes(says))).toHaveLength(1)
    expect(path.plan.problems.map(({ code }) => code)).toContain('crown-base-assumed')
    expect(path.plan.unplanned).toEqual([])
  })
})

describe('dead wood', () => {
  test('without a stem has a blank ratio in every table', () => {
    const { plan, sheets } = pathOf('dead-wood-without-stem')
    expect(
      plan.trees[0]!.visits[0]!.cuts.map(({ limb, aspectRatio }) => [limb.id, aspectRatio])
    ).toContainEqual(['B', null])
    const cutPlan = sheets.find(({ kind }) => kind === 'cut-plan')!
    const header = cutPlan.rows.find((row) => row.includes('Aspect ratio now'))!
    const row = cutPlan.rows.find((cells) => cells[0] === 'T1' && cells[4] === 'B')!
    expect(row[header.indexOf('Aspect ratio now')]).toBeNull()
  })

  test('that led and has no diameter is listed with the reason', () => {
    const { plan } = pathOf('dead-leader-without-diameter')
    expect(plan.trees[0]!.leader.name).toBe('B')
    expect(plan.unplanned.map(({ row, reason }) => [row, reason])).toEqual([
      [2, 'The limb diameter is missing at Survey!H2, and limb A of tree T1 cannot be planned without it.']
    ])
  })
})

test('a limb that cannot be planned keeps the reason of its own measurement', () => {
  const { plan } = pathOf('stem-thick-measured-sideways')
  expect(plan.unplanned.map(({ reason }) => reason)).toEqual([
    'Stem diameter at the union at Survey!I3 reads “thick”, which is not a number.'
  ])
})

test('a point in a column of decimal commas parts thousands, and a comma does not', () => {
  const { plan } = pathOf('comma-decimals-and-a-point')
  const [, , limb] = plan.trees[0]!.tree.limbs
  expect([limb!.diameter, limb!.stem]).toEqual([1016, 1.234])
})

test('dates and numbers that can be two are reported with their cells', () => {
  const { plan } = pathOf('dates-and-two-ways')
  expect(plan.unplanned.map(({ row }) => row)).toEqual([3, 4, 5])
  const [date, typed, two] = plan.unplanned.map(({ reason }) => reason)
  expect(date).toBe('Limb diameter at Survey!H3 holds a date, “2026-03-01”, and not a number.')
  expect(typed).toContain('holds a date, “3-Feb”')
  expect(two).toContain('reads “1,016”, which can be 1.016 or 1016')
})

test.each([NaN, Infinity, -Infinity])(
  'the result %d of a formula is reported and never planned with',
  (result) => {
    for (const header of [
      'Height (ft)',
      'Crown base (ft)',
      'Limb dia (in)',
      'Clearance (ft)',
      'Species',
      'Limb'
    ]) {
      const rows = sampleInventory.slice(0, 9).map((row) => [...row])
      rows[2]![rows[0]!.indexOf(header)] = result
      rows[1]![rows[0]!.indexOf(header)] = result
      const { plan, faults } = wholePath(rows)
      expect(faults.filter((fault) => !/holds the result/.test(fault))).toEqual([])
      expect(plan.problems.map(({ code }) => code)).toContain('not-finite')
    }
  }
)

test('a column that is missing is reported once for all trees and limbs, and at no cell of another column', () => {
  const rows = [
    ['Tree', 'Height (m)', 'Limb', 'Limb dia (mm)', 'Origin (m)', 'Tip (m)'],
    ['T1', 10, 'A', 60, 3, 8],
    ['T1', 10, 'B', 50, 4, 7],
    ['T2', 12, 'A', 60, 3, 8]
  ]
  const { plan } = wholePath(rows)
  const needed = plan.problems.filter(({ code }) => code === 'needed-column')
  expect(needed.map(({ cell, message }) => [cell, message])).toEqual([
    ['', 'No column gives the stem diameter at the union, and limbs cannot be planned without it.']
  ])
  expect(plan.unplanned.map(({ reason }) => reason)).toEqual(Array(3).fill(needed[0]!.message))
  expect(plan.problems.filter(({ message }) => /crown base/.test(message))).toHaveLength(1)
  const vigor = plan.problems.filter(({ message }) => message.includes('vigor'))
  expect(vigor.map(({ code, cell, message }) => [code, cell, message])).toEqual([
    ['assumed-column', '', 'No column gives the vigor; every tree was planned as fair.']
  ])
  expect(vigor[0]!.remedy).toBe(
    'Add a column headed “Vigor” if that is not right, or choose the column that holds it.'
  )
  for (const { remedy } of plan.problems) expect(remedy).not.toMatch(/in Survey!A\d/)
})

describe('a clearance side', () => {
  const limbOn = (side: string | number, bearing: number) => {
    const rows = [
      [
        'Tree',
        'Height (m)',
        'Crown base (m)',
        'Stage',
        'Vigor',
        'Clearance (m)',
        'Side',
        'Limb',
        'Limb dia (mm)',
        'Stem dia (mm)',
        'Origin (m)',
        'Tip (m)',
        'Bearing',
        'Lowest foliage (m)'
      ],
      ['T1', 12, 2, 'medium', 'good', 5, side, 'B', 60, 150, 3, 6, bearing, 2.5]
    ]
    const { plan } = wholePath(rows)
    const { clearanceSide } = plan.trees[0]!.tree
    const asked = plan.trees[0]!.visits[0]!.cuts.some(({ inClearance }) => inClearance)
    const held = plan.problems.some(({ code }) => code === 'clearance-held')
    return {
      clearanceSide,
      meant: asked || held,
      problems: plan.problems.filter(({ code }) => code === 'side-unread')
    }
  }

  test.each<[string | number, number]>([
    ['NNE', 22.5],
    ['north-east', 45],
    ['SSW', 202.5],
    [90, 90],
    ['90°', 90]
  ])('%s is %d°', (side, degrees) => {
    expect(limbOn(side, degrees)).toMatchObject({
      clearanceSide: { text: String(side), degrees },
      meant: true,
      problems: []
    })
    expect(limbOn(side, (degrees + 180) % 360).meant).toBe(false)
  })

  test('in other words counts as every side, and says so; all sides need no word', () => {
    const { clearanceSide, meant, problems } = limbOn('street', 200)
    expect(clearanceSide).toEqual({ text: 'street', degrees: null })
    expect(meant).toBe(true)
    expect(problems.map(({ cell, level }) => [cell, level])).toEqual([['Survey!G2', 'doubt']])
    expect(problems[0]!.message).toContain('reads “street”, which is no direction; limbs on all sides count')
    expect(limbOn('all', 200)).toMatchObject({ meant: true, problems: [] })
  })
})
