/** The titles above the charts of what a visit gains end within the drawing, whatever the limb is called. */
import { drawGain } from '../../src/drawing/gain'
import { textWidth } from '../../src/drawing/labels/textSize'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'
import { readSheets } from '../../src/inventory/readSheets'
import { planInventory } from '../../src/plan/planInventory'

const inventory = readSheets([{ name: sampleSheetName, rows: sampleInventory, top: 0, left: 0 }])
const { trees } = planInventory(inventory, { date: '2026-03-02' })

test.each([
  ['below the trees', 460, 620],
  ['beside them', 520, 300]
])('%s', (_where, width, height) => {
  const titles: string[] = []
  for (const plan of trees)
    for (const visit of plan.visits.slice(0, 1))
      for (const shape of drawGain(plan, visit, { width, height, system: 'in-ft', palette: 'color' })
        .shapes) {
        if (shape.kind !== 'text' || !/^(Leaves of|Top of|.*% of its stem)/.test(shape.text)) continue
        titles.push(shape.text)
        const end = shape.at.x + textWidth(shape.text, shape.size, true)
        expect([shape.text, end <= width + 0.5]).toEqual([shape.text, true])
        expect(shape.size).toBeGreaterThan(7)
      }
  expect(titles.length).toBeGreaterThan(8)
  expect(titles.some((title) => title.startsWith('Leaves of'))).toBe(true)
})
