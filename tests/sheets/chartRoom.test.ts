import { breaksForBlock, breaksForParts, chartRows } from '../../src/sheets/chartRoom'
import { SheetDraft } from '../../src/sheets/draft'
import { pageRoom } from '../../src/sheets/pageBreaks'

const page = { paper: 'letter', orientation: 'portrait' } as const

function draftOf(rows: number): SheetDraft {
  const draft = new SheetDraft([20])
  for (let row = 0; row < rows; row++) draft.line([row], {})
  return draft
}

test('the room of a chart is whole rows of standard height, empty, and as high as asked at least', () => {
  const draft = draftOf(3)
  expect(chartRows(draft, 100)).toEqual({ row: 3, rows: 7 })
  expect(draft.rows.slice(3)).toEqual(Array(7).fill([]))
  expect(draft.heights).toEqual([{ row: 3, rows: 7, points: 15 }])
})

test('a block that fits on the first page with all before it needs no break', () => {
  const most = Math.floor(pageRoom(page, [20]) / 15)
  expect(breaksForBlock(draftOf(most), page, most - 10, most)).toEqual([])
  expect(breaksForBlock(draftOf(most + 1), page, most - 9, most + 1)).toEqual([most - 9])
})

test('taller rows count with their height, as far as they stand above the end of the block', () => {
  const draft = draftOf(40)
  draft.height(30, 10, 60)
  expect(breaksForBlock(draft, page, 20, 30)).toEqual([])
  expect(breaksForBlock(draft, page, 20, 36)).toEqual([20])
})

test('where there is no block, there is no break', () => {
  expect(breaksForBlock(draftOf(500), page, 400, 400)).toEqual([])
})

describe('the parts after a block', () => {
  const most = Math.floor(pageRoom(page, [20]) / 15)
  const bare = { ...page, titleRow: null }

  test('stay whole: one that would run over the page begins the next, one that fits does not', () => {
    expect(breaksForParts(draftOf(most), bare, [], [most - 10])).toEqual([])
    expect(breaksForParts(draftOf(most + 1), bare, [], [most - 10])).toEqual([most - 10])
  })

  test('are computed from the break of the block on', () => {
    const [start, part] = [most * 2 + 5, most * 2 + 20]
    expect(breaksForParts(draftOf(start + most), bare, [start], [part])).toEqual([start])
    expect(breaksForParts(draftOf(start + most + 1), bare, [start], [part])).toEqual([start, part])
  })

  test('have less room by the headers that every page repeats', () => {
    const draft = draftOf(most)
    draft.height(0, 1, 15)
    expect(breaksForParts(draft, { ...page, titleRow: 0 }, [], [most - 10])).toEqual([most - 10])
  })
})
