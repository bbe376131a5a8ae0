import { isRefusal } from '../../shared/refusal'
import { decodeText, readCsv, readCsvFile } from '../../src/file/csvFile'

const utf8 = (text: string) => new TextEncoder().encode(text)

describe('the text of a file', () => {
  test('that is UTF-8 stays so where it was cut off or damaged', () => {
    const bytes = utf8('Érable à écorce, Tilleul à feuilles é')
    expect(decodeText(bytes.subarray(0, -1))).toBe('Érable à écorce, Tilleul à feuilles \ufffd')
  })

  test('loses its mark, in UTF-8 and in UTF-16', () => {
    expect(decodeText(utf8('\uFEFFTree,Limb'))).toBe('Tree,Limb')
    expect(decodeText(new Uint8Array([0xff, 0xfe, 0x54, 0, 0x31, 0]))).toBe('T1')
    expect(decodeText(new Uint8Array([0xfe, 0xff, 0, 0x54, 0, 0x31]))).toBe('T1')
  })

  test('is found in UTF-16 without a mark', () => {
    const text = 'Arbre;Espèce;Hauteur (m)\r\nP1;Érable plané;9,5\r\n'
    const bytes = Buffer.from(text, 'utf16le')
    expect(decodeText(bytes)).toBe(text)
    expect(decodeText(Buffer.from(bytes).swap16())).toBe(text)
  })

  test('in Windows-1252 keeps its dashes, quotation marks and the euro', () => {
    const bytes = Uint8Array.from([0x45, 0xe9, 0x20, 0x96, 0x20, 0x84, 0x41, 0x93, 0x20, 0x80, 0x85])
    expect(decodeText(bytes)).toBe('Eé – „A“ €…')
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

describe('the separator', () => {
  const titled =
    'Survey of invented trees, spring 2026, by the owner\n\nTree;Height (m);Notes\nT1;9,5;long, low\nT2;7;'

  test('is told from the lines together, not from a title above them', () => {
    expect(readCsv(titled)).toEqual([
      ['Survey of invented trees, spring 2026, by the owner'],
      [null],
      ['Tree', 'Height (m)', 'Notes'],
      ['T1', 9.5, 'long, low'],
      ['T2', 7, null]
    ])
    expect(readCsv(titled.replaceAll(';', '\t')).at(-1)).toEqual(['T2', 7, null])
    expect(readCsv(titled.replaceAll(';', '|')).at(-1)).toEqual(['T2', 7, null])
  })

  test('is no comma of decimals, however many there are', () => {
    expect(readCsv('a;b;c\n1,5;2,5;3,5\n4,5;5,5;6,5')[1]).toEqual([1.5, 2.5, 3.5])
    expect(readCsv('1,5\t2,5\n4,5\t5,5')).toEqual([
      [1.5, 2.5],
      [4.5, 5.5]
    ])
  })

  test('may differ in number from line to line', () => {
    expect(readCsv('Tree,Limb,Notes\nT1,B\nT2,C,low; old\nT3,D,,,')).toEqual([
      ['Tree', 'Limb', 'Notes'],
      ['T1', 'B'],
      ['T2', 'C', 'low; old'],
      ['T3', 'D', null, null, null]
    ])
  })

  test('is the one that a first line names, which is no row; the rows keep their place in the file', () => {
    const bytes = Buffer.from('sep=;\r\nTree;Height (m)\r\nT1;9,1\r\n')
    expect(readCsvFile('trees.csv', bytes)).toEqual({
      rows: [
        ['Tree', 'Height (m)'],
        ['T1', 9.1]
      ],
      top: 1
    })
    expect(readCsv('SEP=#\nTree#Height\nT1#9')).toEqual([
      ['Tree', 'Height'],
      ['T1', 9]
    ])
  })
})

describe('the lines of a file', () => {
  const rows = [['Tree', 'Limb'], ['T1', 'B'], [null], ['T2', 'C']]

  test.each([
    ['line feeds', 'Tree,Limb\nT1,B\n\nT2,C\n'],
    ['carriage returns', 'Tree,Limb\rT1,B\r\rT2,C'],
    ['both', 'Tree,Limb\r\nT1,B\r\n\r\nT2,C\r\n'],
    ['one of each', 'Tree,Limb\rT1,B\n\r\nT2,C']
  ])('may end in %s', (_what, text) => {
    expect(readCsv(text)).toEqual(rows)
  })
})

describe('a quote', () => {
  test('within a cell is an inch or a word, and swallows nothing', () => {
    expect(readCsv('Tree,Limb dia,Notes\nT1,3½",12" across\nT2,4",the "old" one')).toEqual([
      ['Tree', 'Limb dia', 'Notes'],
      ['T1', '3½"', '12" across'],
      ['T2', '4"', 'the "old" one']
    ])
  })

  test('that begins a cell and never ends stays a sign of its cell', () => {
    expect(readCsv('Tree,Notes,Limb\nT1,"low,B\nT2,"see, photo",C\nT3,"high,D')).toEqual([
      ['Tree', 'Notes', 'Limb'],
      ['T1', '"low', 'B'],
      ['T2', 'see, photo', 'C'],
      ['T3', '"high', 'D']
    ])
  })

  test('within quotes that is not doubled does not end the cell', () => {
    expect(readCsv('Tree,Notes\nT1,"the "old" one, low"\nT2,')[1]).toEqual(['T1', 'the "old" one, low'])
  })

  test('may have spaces before and behind it', () => {
    expect(readCsv('Tree, Notes\nT1, "low, old" \nT2, x')).toEqual([
      ['Tree', 'Notes'],
      ['T1', 'low, old'],
      ['T2', 'x']
    ])
  })

  test('around a cell with several lines keeps them, ended in one way', () => {
    expect(readCsv('Tree,Notes\r\nT1,"low\r\nold"\r\n')[1]).toEqual(['T1', 'low\nold'])
  })

  test('opened thousands of times over costs no more than the file is long', () => {
    const rows = readCsv(`Tree,Notes\n${'T1,"x "",\n'.repeat(200_000)}`)
    expect(rows).toHaveLength(200_001)
    expect(rows.at(-1)).toEqual(['T1', '"x ""', null])
  })
})

describe('the numbers of a column', () => {
  test('are read below title lines of fewer cells', () => {
    expect(
      readCsv('Invented survey\nTree;Limb dia (mm);Tip (m)\nT1;84,5;1,234\nT2;1.016;7,5').slice(2)
    ).toEqual([
      ['T1', 84.5, 1.234],
      ['T2', 1016, 7.5]
    ])
  })

  test.each(['1,016', "1'016", '1 016,5', '1.016.000', '12345678901234567', '1e5', '+', '-', '.', '5.'])(
    '%s stays as it was typed',
    (text) => {
      expect(readCsv(`Tree\tDia\nT1\t${text}`)[1]).toEqual(['T1', text])
    }
  )
})

test('an id that a program kept from being a number is that id', () => {
  expect(readCsv('Tree,Limb\n="007","=""1E5"""')[1]).toEqual(['007', '1E5'])
})

describe('a file that is no table is refused in one sentence', () => {
  const sentence = (bytes: Uint8Array) => {
    const read = readCsvFile('trees.csv', bytes)
    return isRefusal(read) ? read.sentence : 'not refused'
  }
  const text = (content: string) => sentence(Buffer.from(content))

  test('empty, or only blanks', () => {
    expect(text('')).toMatch(/^trees\.csv is empty: /)
    expect(text('\uFEFF \r\n')).toMatch(/^trees\.csv is empty: /)
  })

  test('binary', () => {
    expect(sentence(new Uint8Array([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13]))).toMatch(
      /holds no text, whatever its name says: /
    )
    expect(text('\u0001\u0002\u0003'.repeat(20))).toMatch(/holds no text/)
  })

  test('but not for a stray control character', () => {
    expect(text(`Tree,Limb\nX\u0001\u000b1,B\u0000\n${'T2,C\n'.repeat(60)}`)).toBe('not refused')
  })

  test('one line of megabytes', () => {
    expect(text('x'.repeat(6_000_000))).toMatch(/more than 32,767 characters in the one cell A1: /)
    expect(text('T1,B,'.repeat(1_000_000))).toMatch(/more than 16,384 columns in row 1: /)
  })

  test('more lines than a sheet has rows', () => {
    expect(text('T1\n'.repeat(1_048_577))).toMatch(/more than 1,048,576 rows: split/)
  })
})
