/** @jest-environment jsdom */
import { problem } from '../../shared/problems'
import { cautions } from '../../src/sheets/cautions'
import { FakeSurface, fakeEngine } from './fakeSurface'
import { inventedPlan } from './inventedPlan'
import { announced, openPane, press, readable, settle } from './openPane'

describe('the first screen', () => {
  test('says how large the selection is and offers one primary button', async () => {
    const { root } = await openPane()
    expect(readable(root)).toContain('Survey!B3:F9: 6 rows, 5 columns')
    const primary = [...root.querySelectorAll('.button-primary')]
    expect(primary.map(({ textContent }) => textContent)).toEqual(['Plan inventory'])
  })

  test('shows every caution', async () => {
    const { root } = await openPane()
    for (const sentence of cautions) expect(readable(root)).toContain(sentence)
  })

  test('says what to select where nothing can be planned, and follows the selection', async () => {
    const { root, surface } = await openPane()
    const several = problem('several-areas', '', { count: 2 })
    surface.tell({ places: [], range: null, remark: '', problem: several, cells: null })
    expect(readable(root)).toContain('The selection has 2 separate areas.Select one block')
    surface.tell({ ...surface.selected, problem: null, places: [] })
    expect(readable(root)).toContain('No inventory was found.An inventory has a header row')
  })

  test('says how a selection was cut, and that any other cell means all of it', async () => {
    const { root, surface } = await openPane()
    expect(readable(root)).toContain('Wherever a cell is selected, this is read.')
    surface.tell({ ...surface.selected, range: 'Survey!B3:F5', remark: 'Only Survey!B3:F5 is read.' })
    expect(readable(root)).toContain('Only Survey!B3:F5 is read.')
  })

  test('names the sheets where there are several, and the number of a great many', async () => {
    const { root, surface } = await openPane()
    const place = (name: string) => ({ address: `${name}!A1:C9`, rows: 9, columns: 3 })
    surface.tell({ ...surface.selected, places: ['Trees', 'Limbs'].map(place) })
    expect(readable(root)).toContain('Trees!A1:C9 and Limbs!A1:C9: 18 rows')
    surface.tell({ ...surface.selected, places: [...'ABCDEF'].map(place) })
    expect(readable(root)).toContain('D!A1:C9 and 2 more sheets: 54 rows')
  })

  test('explains itself where the spreadsheet cannot be reached', async () => {
    const surface = new FakeSurface()
    surface.watchSelection = () => Promise.reject(new Error('no answer'))
    const { root } = await openPane(surface)
    expect(readable(root)).toContain('The spreadsheet did not do what was asked: no answer')
  })
})

describe('planning', () => {
  test('shows the plan, moves focus to it and says so', async () => {
    const { root, surface } = await openPane()
    press(root, 'Plan inventory')
    await settle()
    expect(surface.asked).toEqual(['read selection'])
    expect(document.activeElement?.textContent).toBe('Plan for 2 trees')
    expect(announced(root)).toBe('Plan for 2 trees.')
    expect(readable(root)).toContain('2 cuts at visit 1. 1 row not planned, see Checks.')
  })

  test('shows progress, and cancel brings back what was there', async () => {
    const { root, surface } = await openPane()
    press(root, 'Plan inventory')
    await settle()
    const read = surface.readInventory.bind(surface)
    let answer: () => void = () => undefined
    surface.readInventory = async (wanted, steps) => {
      steps.onProgress(40, 4000)
      await new Promise<void>((resolve) => (answer = resolve))
      return read(wanted, steps)
    }
    press(root, 'Plan again')
    await settle()
    expect(readable(root)).toContain('Reading the rows: 40 of 4,000')
    expect(document.activeElement?.textContent).toBe('Cancel')
    press(root, 'Cancel')
    answer()
    await settle()
    expect(announced(root)).toBe('Canceled. The earlier plan still stands.')
    expect(root.querySelector('progress')).toBeNull()
    expect(document.activeElement?.textContent).toBe('Plan again')
    expect(readable(root)).toContain('Plan for 2 trees')
  })

  test('a canceled reading that rejects is no failure', async () => {
    const { root, surface } = await openPane()
    surface.readInventory = (_wanted, { signal }) =>
      new Promise((_resolve, reject) => {
        signal.addEventListener('abort', () => {
          reject(signal.reason as Error)
        })
      })
    press(root, 'Plan inventory')
    press(root, 'Cancel')
    await settle()
    expect(announced(root)).toBe('Canceled.')
    expect(root.querySelector('.refusal')).toBeNull()
  })

  test('plans once where the button is pressed twice', async () => {
    const { pane, surface } = await openPane()
    await Promise.all([pane.planSelection(), pane.planSelection()])
    expect(surface.asked).toEqual(['read selection'])
  })

  test('says in a sentence what stood in the way, with the remedy, and keeps the earlier plan', async () => {
    const { root, surface, pane } = await openPane()
    await pane.planSelection()
    surface.readInventory = () => Promise.resolve({ read: null, problems: [problem('cell-editing', '')] })
    await pane.planSelection()
    expect(document.activeElement?.textContent).toBe('This could not be done')
    expect(readable(root)).toContain('A cell is being edited')
    expect(readable(root)).toContain('Press Enter or Escape')
    expect(readable(root)).toContain('Plan for 2 trees')
  })

  test('turns a thrown error into a sentence', async () => {
    const { root, surface, pane } = await openPane()
    surface.fault = new Error('the host went away')
    await pane.planSelection()
    expect(readable(root)).toContain('The spreadsheet did not do what was asked: the host went away')
  })

  test('a mistake in the engine is reported, not swallowed', async () => {
    const engine = fakeEngine(inventedPlan(), () => {
      throw new Error('broken rule')
    })
    const { root, pane } = await openPane(new FakeSurface(), engine)
    await pane.planSelection()
    expect(readable(root)).toContain('broken rule')
  })

  test('plans the same range again where the selection points into it', async () => {
    const { root, surface, pane } = await openPane()
    await pane.planSelection()
    surface.selectRow(3)
    await pane.planSelection()
    press(root, 'Plan again')
    await settle()
    expect(surface.asked).toEqual(['read selection', 'read workbook', 'read workbook'])
  })

  test('plans a range again by its address', async () => {
    const { root, surface, pane } = await openPane()
    surface.range = 'Survey!B3:F9'
    surface.tell({ ...surface.selected, range: 'Survey!B3:F9' })
    await pane.planSelection()
    surface.tell({ ...surface.selected, range: null })
    surface.selectRow(3)
    await pane.planSelection()
    press(root, 'Plan again')
    await settle()
    expect(surface.asked).toEqual(['read selection', 'read Survey!B3:F9', 'read Survey!B3:F9'])
  })

  test('plans another selection as it stands', async () => {
    const { root, surface, pane } = await openPane()
    await pane.planSelection()
    surface.tell({ ...surface.selected, range: 'Other!A1:I9' })
    press(root, 'Plan inventory')
    await settle()
    expect(surface.asked).toEqual(['read selection', 'read selection'])
  })

  test('what reading found stands among the checks', async () => {
    const { root, surface, pane } = await openPane()
    surface.readingProblems = [problem('hidden-rows', 'Survey!B3:F9')]
    await pane.planSelection()
    press(root, 'Checks')
    expect(readable(root)).toContain('Hidden or filtered rows in Survey!B3:F9 were included')
  })

  test('opens the checks where no tree could be planned, and offers nothing to write', async () => {
    const plan = { ...inventedPlan(), trees: [] }
    const { root, pane } = await openPane(new FakeSurface(), fakeEngine(plan))
    await pane.planSelection()
    expect(root.querySelector('[aria-selected=true]')?.textContent).toContain('Checks')
    press(root, 'Write')
    expect(readable(root)).toContain('There is no plan to write.')
    expect(() => press(root, 'Write sheets')).toThrow()
  })

  test('keeps what was settled about the columns in the workbook, and plans by it until it is forgotten', async () => {
    const engine = fakeEngine()
    const read = jest.spyOn(engine, 'readSheets')
    const { root, surface, pane } = await openPane(new FakeSurface(), engine)
    await pane.planSelection()
    press(root, 'Columns')
    const [system] = [...root.querySelectorAll('select')]
    system!.value = 'in-ft'
    system!.dispatchEvent(new Event('change'))
    press(root, 'Plan again with these columns')
    await settle()
    expect(read.mock.lastCall?.[1]).toEqual({ system: 'in-ft' })
    const again = await openPane(Object.assign(new FakeSurface(), { kept: surface.kept }), engine)
    await again.pane.planSelection()
    expect(read.mock.lastCall?.[1]).toEqual({ system: 'in-ft' })
    expect(readable(again.root)).toContain(
      '1 answer from this workbook is used: numbers without a unit are in inches and feet.'
    )
    press(again.root, 'Forget')
    await settle()
    expect(again.surface.kept).toBeUndefined()
    expect(read.mock.lastCall?.[1]).toEqual({})
    expect(readable(again.root)).not.toContain('from this workbook')
  })

  test('answers that are damaged are told and ignored', async () => {
    const surface = Object.assign(new FakeSurface(), { kept: '{"version":1,' })
    const { root, pane } = await openPane(surface)
    await pane.planSelection()
    press(root, 'Checks')
    expect(readable(root)).toContain('The answers about columns that this workbook keeps cannot be read')
  })

  test('answers that the workbook does not take hold while the pane is open, and it says so', async () => {
    const engine = fakeEngine()
    const read = jest.spyOn(engine, 'readSheets')
    const { root, surface, pane } = await openPane(new FakeSurface(), engine)
    surface.keepingProblem = problem('answers-not-kept', '', { text: 'It is read only.' })
    await pane.planSelection()
    press(root, 'Columns')
    const [system] = [...root.querySelectorAll('select')]
    system!.value = 'in-ft'
    system!.dispatchEvent(new Event('change'))
    press(root, 'Plan again with these columns')
    await settle()
    expect(read.mock.lastCall?.[1]).toEqual({ system: 'in-ft' })
    press(root, 'Checks')
    expect(readable(root)).toContain('The workbook does not keep the answers about columns: It is read only.')
    await pane.planSelection()
    expect(read.mock.lastCall?.[1]).toEqual({ system: 'in-ft' })
  })

  test('says where a cell is gone', async () => {
    const { root, surface, pane } = await openPane()
    await pane.planSelection()
    press(root, 'Checks')
    press(root, 'Go to cell')
    await settle()
    expect(surface.asked.at(-1)).toBe('go to Survey!D9')
    surface.goneCell = problem('address-gone', 'Survey!D9')
    press(root, 'Go to cell')
    await settle()
    expect(readable(root)).toContain('There is no cell Survey!D9 in this workbook any more.')
  })
})

test('every section of the result has the cautions or the way to them', async () => {
  const { root, pane } = await openPane()
  await pane.planSelection()
  for (const name of ['Plan', 'Estimate', 'Checks', 'Columns']) {
    ;[...root.querySelectorAll<HTMLElement>('[role=tab]')]
      .find(({ textContent }) => textContent?.startsWith(name))
      ?.click()
    const panel = root.querySelector('[role=tabpanel]:not([hidden])')
    expect(panel?.textContent).toContain('Not a tree risk assessment')
    if (panel !== null) press(panel, 'All cautions')
    for (const sentence of cautions) expect(panel?.textContent).toContain(sentence)
  }
  press(root, 'Write')
  for (const sentence of cautions)
    expect(root.querySelector('[role=tabpanel]:not([hidden])')?.textContent).toContain(sentence)
})
