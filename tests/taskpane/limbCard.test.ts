/** @jest-environment jsdom */
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { sampleInventory } from '../../src/file/sampleInventory'
import { findingsByRow } from '../../taskpane/plan/limbCard'
import { openPane, press, readable } from './openPane'

async function planned() {
  const opened = await openPane()
  await opened.pane.planSelection()
  const card = opened.root.querySelector<HTMLElement>('.limb-card')
  if (card === null) throw new Error('The pane has no place for the limb’s card.')
  return { ...opened, card }
}

test('a selected row shows its limb: ratio, standing, priority, decision, what to do and why', async () => {
  const { surface, card } = await planned()
  expect(card.hidden).toBe(true)
  surface.selectRow(2)
  expect(card.hidden).toBe(false)
  const text = readable(card)
  expect(text).toContain('Row 5 Tree K1, limb B')
  expect(text).toContain('Aspect ratio0.84, codominant')
  expect(text).toContain('Priorityhigh (64), then low (7)')
  expect(text).toContain('DecisionReduce')
  expect(text).toContain('Leave a live lateral of at least 3.9 cm.')
  expect(text).toContain('Nearly as thick as the leader')
  expect(text).toContain(
    'Why this and not moreNot cut back further: half would take 2.1 % more of the tree’s foliage'
  )
  expect(text).toContain('Not removed: 0.73 of its stem; a limb is removed up to 0.50')
})

test('a limb that is kept says why', async () => {
  const { surface, card } = await planned()
  surface.selectRow(4)
  expect(readable(card)).toContain('DecisionRetainWell under half its stem.')
})

test.each([
  [1, 'Tree K1, leader', 'Kept. Marked as the leader'],
  [5, 'Tree K2', 'Allowed removal 25 %: young 25 %, good vigor.'],
  [6, 'Tree K3, not planned', 'Its diameter is not a number.']
])('row %i is shown as %s', async (row, title, words) => {
  const { surface, card } = await planned()
  surface.selectRow(row)
  expect(readable(card)).toContain(title)
  expect(readable(card)).toContain(words)
})

test('the card goes where the selection leaves the rows', async () => {
  const { surface, card } = await planned()
  const away = [
    { sheet: 'Other', row: 4, column: 1, rows: 1, columns: 1 },
    { sheet: 'Survey', row: 2, column: 1, rows: 1, columns: 1 },
    { sheet: 'Survey', row: 4, column: 1, rows: 2, columns: 1 },
    { sheet: 'Survey', row: 9, column: 1, rows: 1, columns: 1 },
    { sheet: 'Survey', row: 4, column: 6, rows: 1, columns: 1 },
    { sheet: 'Survey', row: 4, column: 0, rows: 1, columns: 1 }
  ]
  for (const cells of away) {
    surface.selectRow(2)
    expect(card.hidden).toBe(false)
    surface.tell({ ...surface.selected, cells })
    expect(card.hidden).toBe(true)
  }
})

test('a whole row counts as its cells', async () => {
  const { surface, card } = await planned()
  surface.tell({
    ...surface.selected,
    cells: { sheet: 'Survey', row: 4, column: 0, rows: 1, columns: 16384 }
  })
  expect(readable(card)).toContain('limb B')
})

test('the card folds down to its title and stays so for the next row', async () => {
  const { root, surface, card } = await planned()
  surface.selectRow(2)
  press(root, 'Row 5 Tree K1, limb B')
  expect(readable(card)).toBe('Row 5 Tree K1, limb B')
  surface.selectRow(4)
  expect(readable(card)).toBe('Row 7 Tree K1, limb D')
  press(root, 'Row 7 Tree K1, limb D')
  expect(readable(card)).toContain('Well under half its stem.')
})

test('the card leads to its tree', async () => {
  const { root, surface } = await planned()
  press(root, 'Checks')
  surface.selectRow(2)
  press(root, 'Show tree K1')
  expect(root.querySelector('[aria-selected=true]')?.textContent).toBe('Plan')
  expect(document.activeElement?.textContent).toContain('Tree K1')
  expect(document.activeElement?.getAttribute('aria-expanded')).toBe('true')
})

test('in a real plan of a block that starts lower down, every row is found where its cells are', () => {
  const block = { sheet: 'Lower', top: 10, left: 2, rows: sampleInventory }
  const plan = planInventory(readInventory(block), { date: '2031-03-02' })
  const rows = findingsByRow(plan)
  expect(plan.unplanned.length).toBeGreaterThan(0)
  for (const { cell } of plan.unplanned) {
    const row = Number(/\d+$/.exec(cell)?.[0]) - 1 - block.top
    expect([cell, rows.get(row)?.kind]).toEqual([cell, 'unplanned'])
  }
  const limbColumn = sampleInventory[0]!.indexOf('Limb')
  let limbs = 0
  for (const [row, finding] of rows)
    if (finding.kind === 'limb') {
      limbs += 1
      expect(finding.state.limb.id).toBe(sampleInventory[row]?.[limbColumn])
    }
  expect(limbs).toBeGreaterThan(30)
})
