/** @jest-environment jsdom */
import { inventedBlock } from './inventedPlan'
import { announced, openPane, press, readable, settle } from './openPane'

async function write() {
  const opened = await openPane()
  await opened.pane.planSelection()
  const chooseTab = () => {
    const tab = [...opened.root.querySelectorAll<HTMLElement>('[role=tab]')].at(-1)
    tab?.click()
  }
  chooseTab()
  return { ...opened, chooseTab }
}

test('writing says which sheets now stand in the workbook', async () => {
  const { root, surface } = await write()
  press(root, 'Write sheets')
  await settle()
  expect(surface.asked.at(-1)).toBe('write')
  expect(surface.written[0]?.map(({ kind }) => kind)).toEqual(['cut-plan', 'estimate'])
  expect(announced(root)).toBe('Written: the sheets Cut plan and Estimate.')
  expect(document.activeElement?.textContent).toBe('Written: the sheets Cut plan and Estimate.')
})

describe('where an earlier plan left its sheets', () => {
  async function asked() {
    const opened = await write()
    opened.surface.own = [
      { kind: 'cut-plan', sheetName: 'Cut plan' },
      { kind: 'estimate', sheetName: 'Prices' }
    ]
    press(opened.root, 'Write sheets')
    await settle()
    return opened
  }

  test('nothing is written before the question is answered', async () => {
    const { root, surface } = await asked()
    expect(surface.written).toEqual([])
    expect(document.activeElement?.textContent).toBe(
      'There are the sheets Cut plan and Prices from an earlier plan. Replace them?'
    )
    expect(readable(root)).toContain('cannot be undone')
  })

  test.each([
    ['Replace them', 'replace'],
    ['Keep them, write new sheets', 'write']
  ])('%s does what it says', async (label, done) => {
    const { root, surface } = await asked()
    press(root, label)
    await settle()
    expect(surface.asked.at(-1)).toBe(done)
  })

  test('cancel writes nothing and gives the button back', async () => {
    const { root, surface } = await asked()
    press(root, 'Cancel')
    await settle()
    expect(surface.written).toEqual([])
    expect(document.activeElement?.textContent).toBe('Write sheets')
  })

  test('several of a kind are said to be several', async () => {
    const { root, surface, chooseTab } = await write()
    chooseTab()
    surface.own = [1, 2].map((number) => ({ kind: 'estimate', sheetName: `Estimate ${number}` }))
    press(root, 'Write sheets')
    await settle()
    expect(readable(root)).toContain('from earlier plans. Replace the latest of each kind?')
  })
})

test('cells that changed since they were planned keep anything from being written', async () => {
  const { root, surface } = await write()
  surface.block = { ...inventedBlock }
  press(root, 'Write sheets')
  await settle()
  expect(surface.written).toEqual([])
  expect(document.activeElement?.textContent).toBe('Writing did not finish')
  expect(readable(root)).toContain('changed while the plan was being made')
})

test('a failure is said with its remedy, and the same button tries again', async () => {
  const { root, surface } = await write()
  surface.fault = new Error('no room')
  press(root, 'Write sheets')
  await settle()
  expect(readable(root)).toContain('The spreadsheet did not do what was asked: no room')
  surface.fault = null
  press(root, 'Try again')
  await settle()
  expect(announced(root)).toBe('Written: the sheets Cut plan and Estimate.')
})

test('a cancelled writing says so', async () => {
  const { root, surface } = await write()
  surface.writeSheets = (_descriptions, _options, { signal }) =>
    new Promise((_resolve, reject) => {
      signal.addEventListener('abort', () => {
        reject(signal.reason as Error)
      })
    })
  press(root, 'Write sheets')
  await settle()
  press(root, 'Cancel')
  await settle()
  expect(announced(root)).toBe('Writing was cancelled.')
  expect(document.activeElement?.textContent).toBe('Write sheets')
})
