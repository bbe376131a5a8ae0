import { readCsv } from '../../../src/file/csvFile'
import { readSheets } from '../../../src/inventory/readSheets'

/** What a file's columns are taken for, and what is told of it. */
function read(text: string) {
  const { matches, problems, trees } = readSheets(
    [{ name: 'Survey', rows: readCsv(text), top: 0, left: 0 }],
    {}
  )
  return {
    fields: matches.map(({ field }) => field ?? '-'),
    asked: matches.filter(({ confidence }) => confidence === 'likely').map(({ letters }) => letters),
    codes: problems.map(({ code }) => code),
    told: (code: string) => problems.find((each) => each.code === code)?.message ?? '',
    trees
  }
}

describe('one measure in two columns', () => {
  it.each([
    ['Origin (ft),Tip (ft)', '7,28', '6.5,24', ['-', 1]],
    ['Origin (m),Tip (m)', '2.1,8.5', '2,7.5', [0, '-']]
  ])('is read in the system of the others: %s', (heights, first, second, [, inches]) => {
    const found = read(
      `Tree,DBH (in),DBH (cm),Limb,Limb dia (in),Limb dia (cm),Stem dia (in),Stem dia (cm),${heights}\n` +
        `T1,7.2,18.3,A,4.1,10.4,5,12.7,${first}\nT1,7.2,18.3,B,2.7,6.9,5.4,13.7,${second}`
    )
    const pair = (field: string) => (inches === 1 ? [field, '-'] : ['-', field])
    const expected = ['tree', ...pair('trunk'), 'limb', ...pair('diameter'), ...pair('stem'), 'origin', 'tip']
    expect(found.fields).toEqual(expected)
    expect(found.asked).toEqual([])
    expect(found.codes).toEqual(['measures-doubled'])
  })

  it('is left open where the numbers are not the same sizes', () => {
    const found = read(
      'Tree,Limb,Limb dia (in),Limb dia (cm),Stem dia (in),Origin (ft),Tip (ft)\nT1,A,4.1,5,5,7,28\nT1,B,2.7,5.4,5.4,6.5,24'
    )
    expect(found.codes).not.toContain('measures-doubled')
  })

  it.each([
    'Tree,Limb,Limb dia 2023 (in),Limb dia 2026 (in),Stem dia 2023 (in),Stem dia 2026 (in),Origin (ft),Tip (ft)',
    'Tree,Limb,2023 limb dia (in),2026 limb dia (in),2023 stem dia (in),2026 stem dia (in),Origin (ft),Tip (ft)'
  ])('of several years is that of the latest, asked once: %s', (headers) => {
    const found = read(`${headers}\nT1,A,3.6,4.1,4.2,5,7,28\nT1,B,2.1,2.7,4.4,5.4,6.5,24`)
    expect(found.fields).toEqual(['tree', 'limb', '-', 'diameter', '-', 'stem', 'origin', 'tip'])
    expect(found.codes.filter((code) => code !== 'columns-unknown')).toEqual(['years-doubled'])
    expect(found.told('years-doubled')).toMatch(/2026.*\?.*2023/)
  })

  it('is not spoken of where the plan uses it for no year', () => {
    const found = read(
      'Tree,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Photo 2023,Photo 2026\nT1,A,4.1,5,7,28,a.jpg,b.jpg\nT1,B,2.7,5.4,6.5,24,c.jpg,d.jpg'
    )
    expect(found.codes).toEqual(['columns-unknown'])
  })

  it('under titles of years is that of the latest', () => {
    const found = read(
      ',,2023,,,,2026,,,\nTree,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)\n' +
        'T1,A,3.6,4.2,7,26,4.1,5,7,28\nT1,B,2.1,4.4,6.5,22,2.7,5.4,6.5,24'
    )
    const four = ['diameter', 'stem', 'origin', 'tip']
    expect(found.fields).toEqual(['tree', 'limb', '-', '-', '-', '-', ...four])
  })

  it('as girth and diameter is the diameter', () => {
    const found = read(
      'Tree,Limb,Limb girth (cm),Limb dia (cm),Stem girth at union (cm),Stem dia at union (cm),Origin (m),Tip (m)\n' +
        'T1,A,32,10.2,39,12.4,2,8.6\nT1,B,22,7,41,13.1,1.9,7.5'
    )
    expect(found.fields).toEqual(['tree', 'limb', '-', 'diameter', '-', 'stem', 'origin', 'tip'])
    expect(found.codes).toEqual(['girths-doubled'])
  })
})

describe('inches in a column of their own', () => {
  it('are asked about once, with the feet beside them used', () => {
    const found = read(
      'Tree,Height ft,Height in,Limb,Limb dia (in),Stem dia (in),Origin ft,Origin in,Tip (ft)\nT1,30,0,A,4.1,5,7,0,28\nT1,30,0,B,2.7,5.4,6,6,24'
    )
    expect(found.fields).toEqual(['tree', 'height', '-', 'limb', 'diameter', 'stem', 'origin', '-', 'tip'])
    expect(found.codes).toEqual(['inches-apart'])
    expect(found.told('inches-apart')).toMatch(/“Height in” \(C\) and “Origin in” \(H\)\?/)
  })
})

describe('two diameters of one limb', () => {
  const rows = 'T1,A,4.1,5,7,28\nT1,B,2.7,5.4,6.5,24'

  it.each(['Dia 1 (in),Dia 2 (in)', 'Limb dia A (in),Limb dia B (in)'])(
    'that differ are no two readings: %s',
    (headers) => {
      const found = read(`Tree,Limb,${headers},Origin (ft),Tip (ft)\n${rows}`)
      expect(found.fields).toEqual(['tree', 'limb', 'diameter', '-', 'origin', 'tip'])
      expect(found.asked).toEqual(['C'])
      expect(found.told('column-asked')).toMatch(/stem diameter.*Is it D/)
    }
  )

  it('that hardly differ are two readings beside the stem', () => {
    const found = read(
      'Tree,Limb,Limb dia 1 (in),Limb dia 2 (in),Stem dia (in),Origin (ft),Tip (ft)\nT1,A,4.1,4.2,5,7,28\nT1,B,2.7,2.8,5.4,6.5,24'
    )
    expect(found.fields).toEqual(['tree', 'limb', 'diameter', 'diameter2', 'stem', 'origin', 'tip'])
  })
})

describe('two numbers in a cell', () => {
  it.each([
    ['Limb/stem dia (in),Origin (ft),Tip (ft)', '4.1/5.0,7,28', '2.7/5.4,6.5,24'],
    ['Stem ø / limb ø (in),Origin (ft),Tip (ft)', '5.0/4.1,7,28', '5.4/2.7,6.5,24'],
    ['Limb dia (in),Stem dia (in),From-to (ft)', '4.1,5,7-28', '2.7,5.4,6.5-24']
  ])('are read where the header “%s” names both, and told', (headers, first, second) => {
    const { trees, codes } = read(`Tree,Limb,${headers}\nT1,A,${first}\nT1,B,${second}`)
    const limbs = trees[0]?.limbs.map(({ diameter, stem, origin, tip }) => [
      (diameter ?? 0) / 25.4,
      (stem ?? 0) / 25.4,
      (origin ?? 0) / 0.3048,
      (tip ?? 0) / 0.3048
    ])
    const close = (values: readonly number[]): unknown =>
      values.map((each) => expect.closeTo(each, 6) as unknown)
    expect(limbs).toEqual([close([4.1, 5, 7, 28]), close([2.7, 5.4, 6.5, 24])])
    expect(codes).toContain('column-parted')
  })

  it.each([
    [
      'Stem/limb dia (in),Origin (ft),Tip (ft)',
      '4.1/5.0,7,28',
      '2.7/5.4,6.5,24',
      /limb diameter and the stem/
    ],
    ['Limb dia (in),Stem dia (in),Origin (ft)', '4.1,5,7-28', '2.7,5.4,6.5-24', /origin height and the tip/]
  ])('of “%s” are asked about, not averaged', (headers, first, second, question) => {
    const found = read(`Tree,Limb,${headers}\nT1,A,${first}\nT1,B,${second}`)
    expect(found.codes).not.toContain('two-readings')
    expect(found.told('column-of-two')).toMatch(question)
    expect(found.fields.filter((field) => field === '-')).toHaveLength(1)
  })

  it('are two readings or parts of an inch where they are', () => {
    const found = read(
      `Tree,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)\nT1,A,4.1/4.3,3/4,6'-6",28\nT1,B,2.7/2.9,7/8,7'-2",24`
    )
    expect(found.fields).toEqual(['tree', 'limb', 'diameter', 'stem', 'origin', 'tip'])
  })
})

describe('what is wanting', () => {
  it('is not looked for among row numbers, time stamps and coordinates', () => {
    const found = read(
      'OBJECTID,Created,X,Tree,Limb,Limb dia (in),Stem dia (in),Origin (ft),Foo\n' +
        '101,2026-05-04 9:12,451203.5,T1,A,4.1,5,7,28\n102,2026-05-04 9:15,451240.1,T1,B,2.7,5.4,6.5,24\n103,2026-05-04 9:31,451266.8,T2,A,4.4,5.6,8,31'
    )
    expect(found.told('column-asked')).toMatch(/tip height.*Is it I “Foo” \(28; 24; 31\)\?/)
  })

  it('goes by size where the words say nothing: a tip is above its origin', () => {
    const found = read(
      'Tree,Limb,Limb dia (in),Stem dia (in),Bar,Foo\nT1,A,4.1,5,28,7\nT1,B,2.7,5.4,24,6.5\nT2,A,4.4,5.6,31,8'
    )
    expect(found.told('column-asked')).toMatch(/origin height.*Is it F “Foo”/)
  })
})

describe('a list of one row per tree', () => {
  it.each([
    'Tree,Species,DBH (in),Height (ft),Lowest limb (ft),Largest limb dia (in)',
    'Tree,Species,DBH (in),Height (ft),Altura de la cruz (ft),Largest limb dia (in)'
  ])('has no limbs: %s', (headers) => {
    const found = read(`${headers}\nT1,Red maple,7.2,30,6,4.1\nT2,Pin oak,8.1,33,7,4.4`)
    expect(found.trees.flatMap(({ limbs }) => limbs)).toEqual([])
    expect(found.fields).toEqual(['tree', 'species', 'trunk', 'height', 'crownBase', '-'])
    expect(found.asked).toEqual(['E'])
  })
})

describe('a tree without a header', () => {
  it('is proposed where its values repeat with the species', () => {
    const found = read(
      ',Species,Height (ft),Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)\n' +
        'T1,Red maple,30,A,4.1,5,7,28\nT1,Red maple,30,B,2.7,5.4,6.5,24\nT2,Pin oak,33,A,4.4,5.6,8,31'
    )
    expect(found.trees.map(({ id }) => id)).toEqual(['T1', 'T2'])
    expect(found.asked).toEqual(['A'])
  })
})
