/** Small cases that the drawn shapes came down to, each read rightly since. */
import type { Cell } from '../../../shared/cells'
import { readSheets } from '../../../src/inventory/readSheets'

const typed = (text: string): Cell =>
  text === '' ? null : /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text

/** A sheet of lines with bars between the cells. */
const sheet = (name: string, ...lines: string[]) => ({
  ...{ name, top: 0, left: 0 },
  rows: lines.map((line) => line.split('|').map((cell) => typed(cell.trim())))
})

/** What each limb of each tree came to, in a line: diameters in mm, heights in m. */
const limbsOf = (...sheets: ReturnType<typeof sheet>[]) =>
  readSheets(sheets).trees.flatMap(({ id, height, limbs }) =>
    limbs.map(({ id: limb, diameter, stem, origin, tip }) =>
      [id, height, limb, diameter, stem, origin, tip].join(' ')
    )
  )

const fieldsOf = (...sheets: ReturnType<typeof sheet>[]) =>
  readSheets(sheets).matches.map(({ letters, field }) => `${letters} ${field ?? '-'}`)

test('a table of limbs with a lowest foliage and a Spanish name of the limb sums up nothing', () => {
  const trees = sheet('Trees', 'Tree | Height (m) | Crown base (m)', 'T1 | 13.9 | 3.5')
  const limbs = sheet(
    'Limbs',
    'Tree | Nombre de la rama | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m) | Lowest foliage (m)',
    'T1 | L1 | 18.7 | 21.6 | 8.3 | 13.6 | 9.9',
    'T1 | L2 | 9.8 | 25.4 | 7.3 | 11.7 | 8.6'
  )
  expect(limbsOf(trees, limbs)).toEqual(['T1 13.9 L1 187 216 8.3 13.6', 'T1 13.9 L2 98 254 7.3 11.7'])
})

test('a table of means and counts still is a summary', () => {
  const limbs = sheet(
    'Limbs',
    'Tree | Height (m) | Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m)',
    'T1 | 13.9 | L1 | 18.7 | 21.6 | 8.3 | 13.6'
  )
  const means = sheet(
    'Means',
    'Tree | No. of limbs | Mean limb dia (cm) | Max height (m)',
    'T1 | 1 | 18.7 | 13.9'
  )
  expect(limbsOf(limbs, means)).toEqual(['T1 13.9 L1 187 216 8.3 13.6'])
})

test.each(['Limb 1', 'Limbs', 'Äste'])(
  'a lone title, %s, stands over the columns of limbs alone',
  (title) => {
    expect(
      limbsOf(
        sheet(
          'Survey',
          ` | | | ${title}`,
          'Tree | Height (m) | Crown base (m) | ID | diameter (cm) | stem (cm) | origin (m) | tip (m)',
          'T1 | 13.9 | 3.5 | A | 12 | 21 | 4 | 13'
        )
      )
    ).toEqual(['T1 13.9 A 120 210 4 13'])
  }
)

test('a lone title that names the sheet is none of limbs', () => {
  expect(
    limbsOf(
      sheet(
        'Survey',
        ' | | Limb survey 2026',
        'Tree | Height (m) | Crown base (m) | Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m)',
        'T1 | 13.9 | 3.5 | A | 12 | 21 | 4 | 13'
      )
    )
  ).toEqual(['T1 13.9 A 120 210 4 13'])
})

test('above a table of limbs, a label is of the tree', () => {
  expect(
    limbsOf(
      sheet(
        'Form',
        'Tree: | T1',
        'Haut. (m): | 15.5',
        '',
        'Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m)',
        'L1 | 18.7 | 21.6 | 8.3 | 13.6'
      )
    )
  ).toEqual(['T1 15.5 L1 187 216 8.3 13.6'])
})

test('a row of units may hold a single one', () => {
  expect(
    limbsOf(
      sheet(
        'Survey',
        'Tree | Height | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)',
        ' | m | | | | | ',
        'T1 | 13.2 | A | 4 | 10 | 10 | 30'
      )
    )
  ).toEqual(['T1 13.2 A 101.6 254 3.048 9.144'])
})

describe('a bare header is of the limb where its cells change from limb to limb', () => {
  const rows = (...lines: string[]) => sheet('Survey', ...lines)

  test('a stem before the limb’s id', () => {
    const survey = rows(
      'Tree | Height (m) | Crown base (m) | Stem dia (cm) | Limb | Limb dia (cm) | Origin (m) | Tip (m)',
      'T1 | 15 | 2.4 | 28.4 | A | 12.9 | 4.9 | 11.4',
      'T1 | 15 | 2.4 | 29.6 | B | 22.6 | 4.8 | 13.2',
      'T2 | 12 | 2.1 | 27.7 | A | 11.5 | 5.8 | 10.5',
      'T2 | 12 | 2.1 | 24.1 | B | 10.5 | 6 | 10'
    )
    expect(limbsOf(survey)[1]).toBe('T1 15 B 226 296 4.8 13.2')
    const asked = readSheets([survey]).problems.filter(({ code }) => code === 'column-likely')
    expect(asked.map(({ cell }) => cell)).toEqual(['Survey!D1'])
  })

  test('a stem among the tree’s columns and the trunk among the limb’s change places', () => {
    const survey = rows(
      'Stem dia (cm) | Crown base (m) | Tree | Height (m) | Limb | Limb dia (cm) | Trunk dia (cm) | Origin (m) | Tip (m)',
      '28.4 | 2.4 | T1 | 15 | A | 12.9 | 40 | 4.9 | 11.4',
      '29.6 | 2.4 | T1 | 15 | B | 22.6 | 40 | 4.8 | 13.2',
      '27.7 | 2.1 | T2 | 12 | A | 11.5 | 35 | 5.8 | 10.5',
      '24.1 | 2.1 | T2 | 12 | B | 10.5 | 35 | 6 | 10'
    )
    expect(readSheets([survey]).trees.map(({ trunk }) => trunk)).toEqual([400, 350])
    expect(limbsOf(survey)[1]).toBe('T1 15 B 226 296 4.8 13.2')
  })

  test('a tip in a list of limbs alone, and below a form', () => {
    const trees = sheet('Trees', 'Tree | Height (m) | Crown base (m)', 'T1 | 13.9 | 3.5', 'T2 | 12 | 3')
    const limbs = sheet(
      'Limbs',
      'Tree | Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Cime de la branche (m)',
      'T1 | L1 | 18.7 | 21.6 | 8.3 | 13.6',
      'T1 | L2 | 9.8 | 25.4 | 7.3 | 11.7',
      'T2 | L1 | 18.7 | 21.6 | 5.3 | 11.6',
      'T2 | L2 | 9.8 | 25.4 | 4.3 | 10.7'
    )
    const form = sheet(
      'Form',
      'Tree: | T1',
      'Height (m): | 15.5',
      'Crown base (m): | 3',
      '',
      'Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Cime de la branche (m)',
      'L1 | 18.7 | 21.6 | 8.3 | 13.6',
      'L2 | 9.8 | 25.4 | 7.3 | 11.7'
    )
    expect(limbsOf(trees, limbs)[3]).toBe('T2 12 L2 98 254 4.3 10.7')
    expect(limbsOf(form)).toEqual(['T1 15.5 L1 187 216 8.3 13.6', 'T1 15.5 L2 98 254 7.3 11.7'])
  })

  test('not where one tree alone says two things, as a slip would', () => {
    const survey = rows(
      'Tree | Height (m) | Crown base (m) | Stem dia (cm) | Limb | Limb dia (cm) | Origin (m) | Tip (m)',
      'T1 | 15 | 2.4 | 28.4 | A | 12.9 | 4.9 | 11.4',
      'T1 | 15 | 2.4 | 29.6 | B | 22.6 | 4.8 | 13.2',
      'T2 | 12 | 2.1 | 27.7 | A | 11.5 | 5.8 | 10.5'
    )
    expect(fieldsOf(survey)).toContain('D trunk')
  })

  test('not where the numbers of trees begin again in every street', () => {
    const survey = rows(
      'Street | Tree | Height (m) | Crown base (m) | Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m)',
      'Mill Lane | 1 | 15 | 2.4 | A | 12.9 | 28 | 4.9 | 11.4',
      'Mill Lane | 2 | 12 | 2.1 | A | 22.6 | 29 | 4.8 | 11.2',
      'Dock Road | 1 | 11 | 2.2 | A | 11.5 | 27 | 5.8 | 10.5',
      'Dock Road | 2 | 14 | 2.6 | A | 10.5 | 24 | 6 | 10'
    )
    expect(fieldsOf(survey)).toContain('D crownBase')
  })
})

test('the ids of a single tree may stand under the same unknown header in the table of its limbs', () => {
  const trees = sheet('Trees', 'Baumplakette | Height (m) | Crown base (m)', '1204 | 13.9 | 3.5')
  const limbs = sheet(
    'Limbs',
    'Baumplakette | Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m)',
    '1204 | L1 | 18.7 | 21.6 | 8.3 | 13.6',
    '1204 | L2 | 9.8 | 25.4 | 7.3 | 11.7'
  )
  expect(limbsOf(trees, limbs)).toEqual(['1204 13.9 L1 187 216 8.3 13.6', '1204 13.9 L2 98 254 7.3 11.7'])
})

test('the words of a label in one cell with its value may be many, and the value may stand on two lines', () => {
  const form = sheet(
    'Form',
    'Tree: T1',
    'Height (ft): 19.7',
    'Crown base (ft; lowest live branch counts): 3',
    'Tree notes: staked; north side',
    '',
    'Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)',
    'A | 1.2 | 5.9 | 3 | 8'
  )
  const broken = form.rows.map((row) =>
    row.map((cell) => (typeof cell === 'string' ? cell.replace('; n', ';\nn') : cell))
  )
  const [tree] = readSheets([{ ...form, rows: broken }]).trees
  expect(tree?.crownBase).toBeCloseTo(0.9144, 12)
  expect(tree?.notes).toBe('staked;\nnorth side')
})

test('a row that stands twice is a limb entered twice, also where the survey has no other', () => {
  const row = 'T1 | 6 | 0.9 | A | 3 | 15 | 0.9 | 2.4'
  const survey = sheet(
    'Survey',
    'Tree | Height (m) | Crown base (m) | Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m)',
    row,
    row
  )
  expect(limbsOf(survey)).toEqual(['T1 6 A 30 150 0.9 2.4'])
  expect(readSheets([survey]).problems.map(({ code }) => code)).toContain('row-repeated')
})

test('numbers of trees are ids, whatever word stands below them before the sums', () => {
  const survey = sheet(
    'Survey',
    'Tree | Height (m) | Crown base (m) | Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m)',
    '1 | 6 | 0.9 | A | 3 | 15 | 0.9 | 2.4',
    '1 | 6 | 0.9 | B | 4 | 15 | 1 | 2.6',
    'Total | 12 | 1.8 | | 7 | 30 | 1.9 | 5'
  )
  expect(limbsOf(survey)).toEqual(['1 6 A 30 150 0.9 2.4', '1 6 B 40 150 1 2.6'])
})

test.each(['.', ','])(
  'sums without a word are none of a limb, of equal limbs too: decimals with %s',
  (sign) => {
    const tree = ['T1 | 6 | 1', ' | |', ' | |', ' | |']
    const rows = tree.map((cells, at) => `${cells} | L${String(at + 1)} | 1.2 | 5.9 | 3 | 8`)
    const survey = sheet(
      'Survey',
      'Tree | Height (m) | Crown base (m) | Limb | Limb dia (cm) | Stem dia (cm) | Origin (ft) | Tip (ft)',
      ...[...rows, ' | | | | 4.8 | 23.6 | 12 | 32'].map((row) => row.replaceAll('.', sign))
    )
    const [read] = readSheets([survey]).trees
    expect(read?.limbs.map(({ id }) => id)).toEqual(['L1', 'L2', 'L3', 'L4'])
  }
)

test('a row entered twice does not say that ids stand on every row', () => {
  const survey = sheet(
    'Survey',
    'Tree | Height (m) | Crown base (m) | Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m)',
    'T1 | 6 | 0.9 | A | 3 | 15 | 0.9 | 2.4',
    ' | | | B | 4 | 15 | 1 | 2.6',
    'T2 | 7 | 0.9 | A | 3 | 15 | 0.9 | 2.4',
    'T2 | 7 | 0.9 | A | 3 | 15 | 0.9 | 2.4'
  )
  const limbs = ['T1 6 A 30 150 0.9 2.4', 'T1 6 B 40 150 1 2.6', 'T2 7 A 30 150 0.9 2.4']
  expect(limbsOf(survey)).toEqual(limbs)
  const atTheEnd = { ...survey, rows: [...survey.rows.slice(0, 3), ...survey.rows.slice(1, 2)] }
  expect(limbsOf(atTheEnd)).toEqual(limbs.slice(0, 2))
})

test('a lone number with many decimals behind a comma is a length like others', () => {
  const survey = sheet(
    'Survey',
    ' | | | Limb 1',
    'Tree | Height | Crown base | ID | diameter | stem | origin | tip',
    ' | m | m | | cm | in | m | m',
    'T1 | 6 | 0,9 | A | 3 | 5,905511811024 | 0,9 | 2.4 m'
  )
  expect(limbsOf(survey).map((limb) => Math.round(Number(limb.split(' ')[4])))).toEqual([150])
})

test('a height among the limb’s columns is the tree’s where another column gives the tip', () => {
  const survey = sheet(
    'Survey',
    'Limb | Limb dia (cm) | Height (m) | Origin (m) | Tree | Crown base (m) | Stem dia (cm) | Tip (m)',
    'A | 12 | 11 | 5 | T1 | 2.4 | 24 | 10.8',
    'B | 11 | 11 | 4 | T1 | 2.4 | 26 | 9.1',
    'A | 10 | 9 | 4 | T2 | 2.1 | 21 | 8.8'
  )
  const { trees } = readSheets([survey])
  expect(trees.map(({ height, limbs }) => [height, limbs[0]?.tip])).toEqual([
    [11, 10.8],
    [9, 8.8]
  ])
})

test('notes behind a latitude are still those of the limb', () => {
  const survey = sheet(
    'Survey',
    'Tree | Height (m) | Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m) | Lat | Notes',
    'T1 | 13.9 | A | 12 | 21 | 4 | 13 | 41.20311 | thin bark'
  )
  expect(readSheets([survey]).trees[0]?.limbs[0]?.notes).toBe('thin bark')
})

test('the French top of a branch is a tip, and no neighbor by which a stem is the trunk', () => {
  const survey = sheet(
    'Survey',
    'Tree | Height (m) | Crown base (m) | Limb | Limb dia (cm) | Cime de la branche (m) | Stem dia (cm) | Origin (m)',
    'T1 | 13.9 | 3 | A | 12 | 13 | 21 | 4',
    'T1 | 13.9 | 3 | B | 11 | 12 | 22 | 4.5',
    'T2 | 12.9 | 3 | A | 12 | 11 | 20 | 4'
  )
  expect(limbsOf(survey)[0]).toBe('T1 13.9 A 120 210 4 13')
})

test('a lone length with another unit than its column fits by its own', () => {
  const survey = sheet(
    'Survey',
    ' | | | Limb 1',
    'Tree | Height | Crown base | ID | diameter | stem | origin | tip',
    ' | ft | ft | | in | in | ft | ft',
    'T1 | 20 | 3 | A | 1.2 | 149.86 mm | 3 | 8'
  )
  expect(limbsOf(survey).map((limb) => limb.split(' ')[4])).toEqual(['149.86'])
})

test('of a limb that ends where it starts the same is left out in either unit', () => {
  const survey = (tall: string, ...heights: number[]) =>
    sheet(
      'Survey',
      `Tree | Height (m) | Crown base (m) | Limb | Limb dia (cm) | Stem dia (cm) | Origin (${tall}) | Tip (m) | Lowest foliage (m)`,
      `T1 | 3.6576 | 0.4 | A | 3 | 15 | ${heights.join(' | ')}`
    )
  const lowest = [survey('ft', 6, 1.8288, 1.88976), survey('m', 1.8288, 1.8288, 1.88976)].map(
    (each) => readSheets([each]).trees[0]?.limbs[0]?.lowestFoliage
  )
  expect(lowest).toEqual([null, null])
})
