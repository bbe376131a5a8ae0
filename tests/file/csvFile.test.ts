import { decodeText, readCsv } from '../../src/file/csvFile'

const utf8 = (text: string) => new TextEncoder().encode(text)

describe('the text of a file', () => {
  test('loses its mark, in UTF-8 and in UTF-16', () => {
    expect(decodeText(utf8('\uFEFFTree,Limb'))).toBe('Tree,Limb')
    expect(decodeText(new Uint8Array([0xff, 0xfe, 0x54, 0, 0x31, 0]))).toBe('T1')
    expect(decodeText(new Uint8Array([0xfe, 0xff, 0, 0x54, 0, 0x31]))).toBe('T1')
  })

  test('that is not UTF-8 is read as Windows-1252', () => {
    expect(decodeText(new Uint8Array([0xc9, 0x72, 0x61, 0x62, 0x6c, 0x65]))).toBe('Érable')
    expect(decodeText(utf8('Érable'))).toBe('Érable')
  })
})

describe('separated values', () => {
  test('with commas: quotes, line breaks in a cell and blanks', () => {
    expect(readCsv('Tree,Limb dia (in),Notes\r\nT1,4.5,"low, ""old"" cut\nsee photo"\r\nT2,,\r\n')).toEqual([
      ['Tree', 'Limb dia (in)', 'Notes'],
      ['T1', 4.5, 'low, "old" cut\nsee photo'],
      ['T2', null, null]
    ])
  })

  test('with semicolons: a comma is the decimal sign', () => {
    expect(readCsv('Tree;Limb dia (cm);Tip (m)\nT1;12,5;1,250\nT2;7;-0,5')).toEqual([
      ['Tree', 'Limb dia (cm)', 'Tip (m)'],
      ['T1', 12.5, 1.25],
      ['T2', 7, -0.5]
    ])
  })

  test('with semicolons and decimal points: a comma stays as it was typed', () => {
    expect(readCsv('Tree;Limb dia (cm);Height (m)\nT1;12.5;1,250')[1]).toEqual(['T1', 12.5, '1,250'])
  })

  test('a point parts thousands where the file writes decimal commas, and nothing is taken where nothing tells', () => {
    expect(readCsv('Tree;Limb dia (mm);Tip (m)\nT1;84,5;7,5\nT2;1.016;1,234')).toEqual([
      ['Tree', 'Limb dia (mm)', 'Tip (m)'],
      ['T1', 84.5, 7.5],
      ['T2', 1016, 1.234]
    ])
    expect(readCsv('Tree;Limb dia (mm)\nT1;1.016\nT2;-0')).toEqual([
      ['Tree', 'Limb dia (mm)'],
      ['T1', '1.016'],
      ['T2', 0]
    ])
  })

  test('with tabs', () => {
    expect(readCsv('Tree\tLimb\tLimb dia (in)\nT1\tB\t3')[1]).toEqual(['T1', 'B', 3])
  })

  test('a comma in a quoted header does not make commas the separator', () => {
    expect(readCsv('Tree;"Location, street";Limb\nT1;"Mill road, 2";B')).toEqual([
      ['Tree', 'Location, street', 'Limb'],
      ['T1', 'Mill road, 2', 'B']
    ])
  })

  test.each(['007', '1E5', '0x10', '15 %', '3-2', 'about 3', '1_000', 'Infinity', 'NaN', '=1+1'])(
    '%s is no plain number and stays text',
    (text) => {
      expect(readCsv(`Tree,Limb\n${text},B`)[1]).toEqual([text, 'B'])
    }
  )

  test('an empty file has no rows', () => {
    expect(readCsv('')).toEqual([])
  })
})
