/** @jest-environment jsdom */
import { problem } from '../../shared/problems'
import { noDetails } from '../../src/details/detailsBook'
import { FakeSurface, fakeEngine } from './fakeSurface'
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

describe('the sheets to write', () => {
  const tick = (root: ParentNode, label: string) => {
    const found = [...root.querySelectorAll('label')].find(({ textContent }) => textContent.startsWith(label))
    if (!found?.control) throw new Error(`There is no box “${label}”.`)
    found.control.click()
  }

  test('are those that are ticked, in their own order', async () => {
    const { root, surface } = await write()
    for (const label of ['Specification', 'Client report', 'Estimate']) tick(root, label)
    press(root, 'Write sheets')
    await settle()
    expect(surface.written[0]?.map(({ kind }) => kind)).toEqual([
      'cut-plan',
      'client-report',
      'specification'
    ])
  })

  test('nothing ticked writes nothing and says what to do', async () => {
    const { root, surface } = await write()
    for (const label of ['Cut plan', 'Estimate']) tick(root, label)
    press(root, 'Write sheets')
    await settle()
    expect(surface.written).toEqual([])
    expect(announced(root)).toBe('Nothing is ticked: tick at least one sheet to write.')
    expect(readable(root)).toContain('Nothing is ticked: tick at least one sheet to write.Write sheets')
  })

  test('only those of an earlier plan that would be written again are asked about', async () => {
    const { root, surface } = await write()
    surface.own = [{ kind: 'work-order', sheetName: 'Work order' }]
    press(root, 'Write sheets')
    await settle()
    expect(surface.written.length).toBe(1)
  })

  test('the details of the job are read with the plan and handed to every document', async () => {
    const engine = fakeEngine()
    const handed: unknown[] = []
    const describe = engine.describeDocuments
    engine.describeDocuments = (wanted, plan, offer, details) => {
      handed.push(details)
      return describe(wanted, plan, offer, details)
    }
    const surface = new FakeSurface()
    const rows = [
      ['What', 'Value'],
      ['Client', 'Quarry trust (invented)'],
      ['Revision', 2]
    ]
    surface.details = { rows, sheet: 'Job details', top: 0, left: 0 }
    const { root, pane } = await openPane(surface, engine)
    await pane.planSelection()
    ;[...root.querySelectorAll<HTMLElement>('[role=tab]')].at(-1)?.click()
    expect(readable(root)).toContain('Job details: Quarry trust (invented)')
    press(root, 'Write sheets')
    await settle()
    expect(handed).toEqual([{ ...noDetails, client: 'Quarry trust (invented)', revision: '2' }])
  })

  test('pictures are read as the sheets are written; what cannot be used is told beside what was written', async () => {
    const engine = fakeEngine()
    const handed: unknown[] = []
    const describe = engine.describeDocuments
    engine.describeDocuments = (...order) => {
      handed.push(order[3].logo, order[4])
      return describe(...order)
    }
    const surface = new FakeSurface()
    const picture = {
      kind: 'png',
      width: 3,
      height: 2,
      turn: 1,
      bytes: () => Promise.resolve(new Uint8Array())
    } as const
    const photographs = new Map([['T1', picture]])
    const facts = { text: 'on the sheet Survey', tree: 'T2', why: 'is damaged' }
    surface.pictures = { logo: picture, photographs, problems: [problem('photo-unusable', '', facts)] }
    const { root, pane } = await openPane(surface, engine)
    await pane.planSelection()
    ;[...root.querySelectorAll<HTMLElement>('[role=tab]')].at(-1)?.click()
    press(root, 'Write sheets')
    await settle()
    expect(handed).toEqual([picture, photographs])
    expect(surface.written).toHaveLength(1)
    expect(readable(root)).toContain('Written: the sheets')
    expect(readable(root)).toContain('The photograph on the sheet Survey of tree T2 is damaged')
  })

  test('where the inventory has no details, a sheet for them is offered, written once and told', async () => {
    const { root, surface } = await write()
    expect(readable(root)).toContain('Job details: none, lines to fill by hand')
    const more = [...root.querySelectorAll('summary, button')].find((each) =>
      each.textContent?.includes('Job details: none')
    ) as HTMLElement
    more.click()
    await settle()
    press(root, 'Write a Job details sheet')
    await settle()
    expect(surface.asked).toContain('write details of Survey')
    expect(readable(root)).toContain('Written: the sheet Job details. It is yours')
  })

  test('stay ticked when the plan is made again', async () => {
    const { root, pane, chooseTab, surface } = await write()
    tick(root, 'Work order')
    await pane.planSelection()
    chooseTab()
    press(root, 'Write sheets')
    await settle()
    expect(surface.written[0]?.map(({ kind }) => kind)).toEqual(['cut-plan', 'estimate', 'work-order'])
  })
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

  test('several of a kind are announced as several', async () => {
    const { root, surface, chooseTab } = await write()
    chooseTab()
    surface.own = [1, 2].map((number) => ({ kind: 'estimate', sheetName: `Estimate ${number}` }))
    press(root, 'Write sheets')
    await settle()
    expect(readable(root)).toContain('from earlier plans. Replace the latest of each kind?')
  })
})

test('all sheets of the inventory have to be unchanged, and no others', async () => {
  const surface = new FakeSurface()
  surface.others = [{ name: 'Prices', rows: [['Rope', 40]], top: 0, left: 0 }]
  const { root, pane } = await openPane(surface)
  await pane.planSelection()
  press(root, 'Write')
  press(root, 'Write sheets')
  await settle()
  expect(surface.source.map(({ name }) => name)).toEqual(['Survey'])
})

test('cells that changed since they were planned keep anything from being written', async () => {
  const { root, surface } = await write()
  surface.block = { ...inventedBlock, rows: [...inventedBlock.rows] }
  press(root, 'Write sheets')
  await settle()
  expect(surface.written).toEqual([])
  expect(document.activeElement?.textContent).toBe('Writing did not finish')
  expect(readable(root)).toContain('changed while the plan was being made')
})

test('a failure is shown with its remedy, and the same button tries again', async () => {
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

test('a canceled writing says so', async () => {
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
  expect(announced(root)).toBe('Writing was canceled.')
  expect(document.activeElement?.textContent).toBe('Write sheets')
})
