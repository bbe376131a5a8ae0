/** @jest-environment jsdom */
/** A plan says when it is older than what it was made from, and nothing stale is written. */
import { problem } from '../../shared/problems'
import { FakeSurface } from './fakeSurface'
import { announced, openPane, press, readable, settle } from './openPane'

const rates = (wage: number) => ({ rows: [['Wage', wage]], sheet: 'Rates', top: 0, left: 0 })

async function planned(surface = new FakeSurface()) {
  const opened = await openPane(surface)
  await opened.pane.planSelection()
  const write = async () => {
    ;[...opened.root.querySelectorAll<HTMLElement>('[role=tab]')].at(-1)?.click()
    press(opened.root, 'Write sheets')
    await settle()
  }
  return { ...opened, write }
}

const staleCards = (root: Element) =>
  [...root.querySelectorAll('.card-list > *')].map((card) => card.classList.contains('is-stale'))

describe('a cell that is typed over after the plan', () => {
  test('is named above the plan, and marks its tree alone', async () => {
    const { root, surface } = await planned()
    surface.type(1, 3, 77)
    await settle()
    expect(readable(root)).toContain('Changed since this plan: Survey!E4.')
    expect(announced(root)).toBe('Changed since this plan: Survey!E4.')
    expect(staleCards(root)).toEqual([true, false])
  })

  test('is forgotten where it is as it was again', async () => {
    const { root, surface } = await planned()
    const before = surface.block?.rows[1]?.[3] ?? null
    surface.type(1, 3, 77)
    await settle()
    surface.type(1, 3, before)
    await settle()
    expect(readable(root)).not.toContain('Changed since')
    expect(staleCards(root)).toEqual([false, false])
    expect(announced(root)).toBe('The plan is up to date again.')
  })

  test('marks every tree where it is a header', async () => {
    const { root, surface } = await planned()
    surface.type(0, 3, 'Something else')
    await settle()
    expect(staleCards(root)).toEqual([true, true])
  })

  test('marks the card of its row, wherever the selection was before', async () => {
    const { root, surface } = await planned()
    surface.selectRow(1)
    surface.type(1, 3, 77)
    await settle()
    expect(root.querySelector('.limb-card.is-stale')?.textContent).toContain(
      'plan again before you go by this'
    )
  })

  test('that nothing was read from is no change', async () => {
    const { root, surface } = await planned()
    const area = { row: 500, column: 40, rows: 1, columns: 1 }
    surface.tellChange({ sheet: 'Survey', area })
    surface.tellChange({ sheet: 'Elsewhere', area })
    await settle()
    expect(readable(root)).not.toContain('Changed since')
  })

  test('many are named by the first few and their number', async () => {
    const { root, surface } = await planned()
    for (const row of [1, 2, 3, 4, 5]) surface.type(row, 3, 77)
    await settle()
    expect(readable(root)).toContain('Changed since this plan: Survey!E4, Survey!E5, Survey!E6 and 2 more.')
  })

  test('Plan again takes the mark away', async () => {
    const { root, surface } = await planned()
    surface.type(1, 3, 77)
    await settle()
    press(root, 'Plan again')
    await settle()
    expect(readable(root)).not.toContain('Changed since')
    expect(surface.asked).toEqual(['read selection', 'read workbook'])
  })
})

describe('Write, where something changed unseen', () => {
  const change: Record<string, (surface: FakeSurface) => void> = {
    'Rates!B1': (surface) => (surface.rates = rates(56)),
    'the sheet Rules, which is new': (surface) =>
      (surface.rules = { rows: [['x']], sheet: 'Rules', top: 0, left: 0 }),
    'the sheet Job details, which is new': (surface) =>
      (surface.details = { rows: [['x']], sheet: 'Job details', top: 0, left: 0 })
  }

  test.each(Object.keys(change))('plans again first, writes that, and says so: %s', async (words) => {
    const surface = new FakeSurface()
    surface.rates = rates(28)
    const { root, write } = await planned(surface)
    change[words]?.(surface)
    await write()
    await settle()
    expect(surface.asked).toEqual(['read selection', 'read workbook', 'write'])
    expect(announced(root)).toBe(
      `Written: the sheets Cut plan and Estimate. Planned again first, as this had changed: ${words}.`
    )
    expect(readable(root)).toContain('Planned again first')
  })

  test('writes nothing where the inventory is gone, and says why', async () => {
    const { root, surface, write } = await planned()
    surface.gone = true
    surface.block = null
    surface.readingProblems = [problem('spreadsheet-failed', '', { text: 'the sheet Survey is gone' })]
    await write()
    await settle()
    expect(surface.written).toEqual([])
    expect(readable(root)).toContain('the sheet Survey is gone')
    expect(readable(root)).toContain('Changed since this plan: the sheet Survey, which is gone.')
    press(root, 'Write sheets')
  })

  test('writes at once where nothing did, and again, though its own Estimate is new since', async () => {
    const { surface, write, root } = await planned()
    const writeSheets = surface.writeSheets.bind(surface)
    surface.writeSheets = (...order) => {
      surface.estimate = { rows: [['Estimate', surface.written.length]], sheet: 'Estimate', top: 0, left: 0 }
      surface.tellChange({ sheet: 'Estimate', area: null })
      return writeSheets(...order)
    }
    await write()
    press(root, 'Write again')
    await settle()
    press(root, 'Replace them')
    await settle()
    expect(surface.asked).toEqual(['read selection', 'write', 'replace'])
    expect(readable(root)).not.toContain('Changed since')
  })
})

describe('a workbook that is opened again', () => {
  test('offers what was planned and written last, by one press', async () => {
    const first = await planned()
    await first.write()
    const again = new FakeSurface()
    again.lastPlan = first.surface.lastPlan
    const { root } = await openPane(again)
    expect(readable(root)).toContain('The documents here were planned from')
    press(root, 'Plan Survey!')
    await settle()
    expect(again.asked).toEqual(['read workbook'])
    expect(readable(root)).not.toContain('The documents here were planned from')
  })

  test.each([undefined, 7, 'not json', '{"range":3,"address":"A1","date":"x"}', '{"range":null}'])(
    'offers nothing where it keeps %p',
    async (kept) => {
      const surface = new FakeSurface()
      surface.lastPlan = kept
      const { root } = await openPane(surface)
      expect(readable(root)).not.toContain('The documents here')
      expect(readable(root)).not.toContain('This could not be done')
    }
  )
})
