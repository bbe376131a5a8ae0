/** @jest-environment jsdom */
import type { CellBlock } from '../../shared/cells'
import { problem } from '../../shared/problems'
import { defaultRules, ruleBook } from '../../shared/rules'
import { ruleChanges } from '../../src/plan/rules/ruleChanges'
import { timingNotes, type TimingAnswers } from '../../src/season/timing'
import type { Plan } from '../../src/plan/plan'
import { FakeSurface, fakeEngine } from './fakeSurface'
import { inventedPlan } from './inventedPlan'
import { announced, openPane, press, readable, settle } from './openPane'

const sheet: CellBlock = { rows: [], sheet: 'House rules', top: 0, left: 0 }

async function planned(plan: Plan = inventedPlan(), rules: CellBlock | null = null) {
  const surface = new FakeSurface()
  surface.rules = rules
  const { root, pane } = await openPane(surface, fakeEngine(plan))
  await pane.planSelection()
  return { root, pane, surface }
}

describe('the rules of a plan', () => {
  test('are the defaults where the workbook has no Rules sheet, and one can be written', async () => {
    const { root, surface } = await planned()
    press(root, 'Rules: the defaults')
    press(root, 'Write a Rules sheet')
    await settle()
    expect(surface.asked).toContain('write rules')
    expect(announced(root)).toBe('Written: the sheet Rules. It is yours: change it, then press Plan again.')
    expect(document.activeElement?.textContent).toBe(announced(root))
    expect(() => press(root, 'Write a Rules sheet')).toThrow()
  })

  test('are named where they were changed, with the reason or the lack of one', async () => {
    const plan = inventedPlan()
    const rules = { ...defaultRules, allowedYoung: 0.35, cutsPerVisit: 4 }
    const changes = ruleChanges(rules, { allowedYoung: 'vigorous, agreed with the owner' })
    const { root } = await planned({ ...plan, rules, ruleChanges: changes }, sheet)
    press(root, 'Rules: 2 changed from the defaults')
    const read = readable(root)
    expect(read).toContain(`${ruleBook.allowedYoung.name}: 0.35, by default 0.25 (share).`)
    expect(read).toContain('Vigorous, agreed with the owner.')
    expect(read).toContain(
      `${ruleBook.cutsPerVisit.name}: 4, by default 6 (cuts). No reason was written down.`
    )
    expect(read).toContain('From the sheet House rules, which is yours to change.')
    expect(() => press(root, 'Write a Rules sheet')).toThrow()
  })

  test('that could not be written are reported, and the button stays', async () => {
    const { root, surface } = await planned()
    surface.writeRules = () => Promise.resolve(problem('users-sheet-exists', '', { cell: 'Rules' }))
    press(root, 'Rules: the defaults')
    press(root, 'Write a Rules sheet')
    await settle()
    expect(announced(root)).toContain('There is already a sheet Rules in this workbook')
    surface.writeRules = () => Promise.reject(new Error('no room'))
    press(root, 'Write a Rules sheet')
    await settle()
    expect(readable(root)).toContain('The spreadsheet did not do what was asked: no room')
    press(root, 'Write a Rules sheet')
  })

  test('that cannot be read keep the plan from being made by the wrong ones', async () => {
    const { root, surface, pane } = await planned()
    surface.rules = problem('cell-editing', '')
    await pane.planSelection()
    expect(document.activeElement?.textContent).toBe('This could not be done')
    expect(readable(root)).toContain('A cell is being edited')
  })

  test('reach the engine with every planning', async () => {
    const engine = fakeEngine()
    const byRules = jest.spyOn(engine, 'planByRules')
    const surface = new FakeSurface()
    const { pane } = await openPane(surface, engine)
    await pane.planSelection()
    surface.rules = sheet
    await pane.planSelection()
    expect(byRules.mock.calls).toEqual([[null], [sheet]])
  })
})

describe('the season', () => {
  /** The invented plan, its first tree an oak, with these answers. */
  function seasonal(answers: TimingAnswers): Plan {
    const plan = inventedPlan()
    const [first, ...rest] = plan.trees
    const trees = [{ ...first!, tree: { ...first!.tree, species: 'Pin oak' } }, ...rest]
    return { ...plan, trees, timing: timingNotes({ date: '2031-05-02', trees }, answers) }
  }

  test('a closed window stands above the trees and opens on the card of its tree', async () => {
    const plan = seasonal({ region: 'Wisconsin' })
    const id = plan.trees[0]!.tree.id
    const { root } = await planned(plan)
    expect(readable(root)).toContain(
      `Closed. Tree ${id}. Wisconsin, oak wilt: closed from 1 April to 31 July`
    )
    press(root, `Tree ${id}`)
    const card = [...root.querySelectorAll('.card')].find((each) => each.textContent.includes(`Tree ${id}`))!
    expect(readable(card)).toContain('Season: closed window')
    expect(readable(card)).toContain(
      'Wisconsin Department of Natural Resources, oak wilt (read in the source)'
    )
  })

  test('a region that is not given is asked for, and nothing is called open', async () => {
    const { root } = await planned(seasonal({}))
    expect(readable(root)).toContain('Ask. No region is given')
    expect(root.textContent).not.toContain('Open.')
  })
})
