/** @jest-environment jsdom */
import { groupProblems } from '../../shared/groupProblems'
import { problem } from '../../shared/problems'
import { withWaiting } from '../../src/plan/leftOut'
import { inventedRatesNotice } from '../../src/sheets/cautions'
import { allChecks, checkEntry } from '../../taskpane/checks/checksSection'
import { FakeSurface, fakeEngine } from './fakeSurface'
import { openPane, press, readable, settle } from './openPane'

async function section(name: string) {
  const engine = fakeEngine()
  const opened = await openPane(new FakeSurface(), engine)
  await opened.pane.planSelection()
  press(opened.root, name)
  return { ...opened, engine }
}

describe('the estimate', () => {
  test('lists the lines by visit, their sums, the totals, and says that the rates are invented', async () => {
    const { root } = await section('Estimate')
    const text = readable(root)
    expect(text).toContain(inventedRatesNotice)
    const tables = [...root.querySelectorAll('table')].map((table) => readable(table))
    expect(tables).toHaveLength(1)
    expect(tables[0]).toContain('Visit 12031')
    expect(tables[0]).toContain('K1212.401,240.00')
    expect(tables[0]).toContain('2 trees413.351,335.00')
    expect(text).toContain('Subtotal1,335.00')
    expect(text).toContain('Tax, 7 %93.45')
    expect(text).toContain('Total, XTS1,428.45')
    // 310.00 and 7 % are 331.70, less 30 % and more, to two figures.
    expect(text).toContain('a forecast and not in the price: about 230.00 to 440.00 XTS with tax')
  })

  test('has headers and a caption for every table', async () => {
    const { root } = await section('Estimate')
    for (const table of root.querySelectorAll('table')) {
      expect(table.caption).not.toBeNull()
      expect(table.querySelectorAll('thead th[scope=col]')).toHaveLength(4)
      for (const row of table.tBodies[0]!.rows) expect(row.querySelector('th[scope=row]')).not.toBeNull()
    }
  })

  test('says how a line came about when asked', async () => {
    const { root } = await section('Estimate')
    press(root, 'How the lines of visit 1')
    expect(readable(root)).toContain('K1: Invented.')
  })
})

describe('the checks', () => {
  test('come worst first, each with its remedy and the way to its cell', async () => {
    const { root, surface } = await section('Checks')
    const titles = [...root.querySelectorAll('.checks h3')].map(({ textContent }) => textContent)
    expect(titles).toEqual(['Rows not planned 1', 'Doubts 1', 'Notes 1'])
    const first = root.querySelector('.check')!
    expect(readable(first)).toContain('reads “thick”, which is not a number.Type the measured number alone.')
    press(first, 'Go to cell Survey!D9')
    expect(surface.asked.at(-1)).toBe('go to Survey!D9')
  })

  test('several of one cause are one, and the button leads to one cell after the other', () => {
    const reads = (cell: string) => problem('not-a-number', cell, { column: 'Limb diameter', text: 'thick' })
    const [group] = groupProblems(['Survey!D9', 'Survey!D4', 'Survey!D6'].map(reads))
    const left = [4, 6, 9].map((row) => ({
      tree: 'K3',
      at: row - 3,
      row,
      cell: `Survey!B${String(row)}`,
      reason: reads(`Survey!D${String(row)}`).message
    }))
    const checks = allChecks(withWaiting([group!], left), left)
    expect(checks).toHaveLength(1)
    const asked: string[] = []
    const entry = checkEntry(checks[0]!, (cell) => asked.push(cell))
    expect(readable(entry)).toContain('3 limbs wait for them: rows 4, 6 and 9.')
    expect(readable(entry)).toContain('D4, 1 of 3')
    for (const which of ['D6, 2 of 3', 'D9, 3 of 3', 'D4, 1 of 3']) {
      press(entry, 'Go to cell')
      expect(readable(entry)).toContain(which)
    }
    expect(asked).toEqual(['Survey!D4', 'Survey!D6', 'Survey!D9'])
  })

  test('a row left out is listed even where no problem names it', () => {
    const found = problem('not-a-number', 'Survey!D9', { column: 'Limb diameter', text: 'thick' })
    const left = [
      { tree: 'K3', at: 6, row: 9, cell: 'Survey!B9', reason: 'Its diameter is not a number.' },
      { tree: 'K3', at: 5, row: 8, cell: 'Survey!B8', reason: 'Its tree has no height.' }
    ]
    const checks = allChecks([found], left)
    expect(checks.map(({ cells }) => cells)).toEqual([['Survey!D9'], ['Survey!B8']])
    expect(checks[1]?.message).toBe('Tree K3: Its tree has no height.')
  })
})

describe('the columns', () => {
  const labels = (root: Element) =>
    [...root.querySelectorAll('.column')].map((column) => column.getAttribute('aria-label'))

  test('show only what was uncertain, and every column when asked', async () => {
    const { root } = await section('Columns')
    expect(labels(root)).toEqual(['Column D', 'Column F'])
    expect(readable(root)).toContain('2 columns of 5 left a doubt.')
    expect(readable(root)).toContain(
      'Read as Limb diameter; the header names no unit, so centimeters was assumed.'
    )
    press(root, 'Show every column')
    expect(labels(root)).toHaveLength(5)
    expect(document.activeElement?.tagName).toBe('SELECT')
  })

  test('every select has its label', async () => {
    const { root } = await section('Columns')
    for (const select of root.querySelectorAll('select'))
      expect(root.querySelector(`label[for=${select.id}]`)?.textContent).not.toBe('')
  })

  test('plan again with the corrected meanings and units', async () => {
    const { root, engine } = await section('Columns')
    const read = jest.spyOn(engine, 'readSheets')
    const change = (select: HTMLSelectElement, value: string) => {
      select.value = value
      select.dispatchEvent(new Event('change'))
    }
    const [, meaningOfD, unitOfD, meaningOfF] = [...root.querySelectorAll('select')]
    change(unitOfD!, 'mm')
    change(meaningOfD!, 'stem')
    change(meaningOfF!, 'tip')
    press(root, 'Plan again with these columns')
    await settle()
    expect(read.mock.lastCall?.[1]).toEqual({
      answers: [
        { header: 'Limb dia', field: 'stem', unit: 'mm' },
        { header: 'Color of tag', field: 'tip' }
      ]
    })
  })

  test('a column that comes to hold lengths asks for its unit', async () => {
    const { root } = await section('Columns')
    const column = root.querySelectorAll('.column')[1]!
    expect(column.querySelectorAll('.field:not([hidden]) select')).toHaveLength(1)
    const meaning = column.querySelector('select')!
    meaning.value = 'tip'
    meaning.dispatchEvent(new Event('change'))
    expect(column.querySelectorAll('.field:not([hidden]) select')).toHaveLength(2)
  })
})

describe('the tabs', () => {
  test('are one stop, and arrow keys, Home and End move between them', async () => {
    const { root, pane } = await openPane()
    await pane.planSelection()
    const all = [...root.querySelectorAll<HTMLElement>('[role=tab]')]
    expect(all.filter(({ tabIndex }) => tabIndex === 0)).toHaveLength(1)
    const key = (name: string) =>
      (document.activeElement ?? root).dispatchEvent(
        new KeyboardEvent('keydown', { key: name, bubbles: true, cancelable: true })
      )
    const chosen = () => root.querySelector('[aria-selected=true]')?.textContent
    all[0]!.focus()
    key('ArrowRight')
    expect(chosen()).toBe('Estimate')
    key('ArrowLeft')
    key('ArrowLeft')
    expect(chosen()).toBe('Write')
    key('Home')
    expect(chosen()).toBe('Plan')
    key('End')
    expect(chosen()).toBe('Write')
    const shown = root.querySelectorAll('[role=tabpanel]:not([hidden])')
    expect(shown).toHaveLength(1)
    expect(shown[0]!.getAttribute('aria-labelledby')).toBe(all[4]!.id)
  })
})
