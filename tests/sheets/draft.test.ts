import { SheetDraft } from '../../src/sheets/draft'
import type { Format } from '../../src/sheets/sheet'

const body: Format = { size: 10 }
const bold: Format = { bold: true }
const ruled: Format = { underline: '#000000' }

const areas = (draft: SheetDraft) =>
  draft.formats.map(({ area, format }) => [area.row, area.column, area.rows, area.columns, format])

describe('looks of a draft', () => {
  test('a look goes on where the same look ends right above', () => {
    const draft = new SheetDraft([10, 10])
    for (const text of ['a', 'b', 'c']) {
      const row = draft.line([text], body)
      draft.format(row, 0, 1, 1, bold)
    }
    expect(areas(draft)).toEqual([
      [0, 0, 3, 2, body],
      [0, 0, 3, 1, bold]
    ])
  })

  test('not below a gap, in other columns, or under a look that reaches further down', () => {
    const draft = new SheetDraft([10, 10])
    draft.format(0, 0, 1, 2, body)
    draft.format(2, 0, 1, 2, body)
    draft.format(3, 0, 1, 1, body)
    expect(draft.formats).toHaveLength(3)

    draft.format(4, 0, 5, 2, bold)
    draft.format(4, 0, 1, 1, body)
    expect(areas(draft).slice(-3)).toEqual([
      [3, 0, 1, 1, body],
      [4, 0, 5, 2, bold],
      [4, 0, 1, 1, body]
    ])
  })

  test('a line below each area stays a line below each', () => {
    const draft = new SheetDraft([10])
    draft.format(0, 0, 1, 1, ruled)
    draft.format(1, 0, 1, 1, ruled)
    expect(draft.formats).toHaveLength(2)
  })
})
