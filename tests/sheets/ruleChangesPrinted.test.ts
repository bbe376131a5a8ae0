/** A raised allowance and its written reason stand in every document that people act on. */
import { rulesWith } from '../../shared/rules'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { firstVisit } from '../../src/price/offers'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeDocuments } from '../../src/sheets/describeDocuments'
import { sampleInventory } from '../../src/file/sampleInventory'

const inventory = readInventory({ rows: sampleInventory, sheet: 'Inventory', top: 0, left: 0 })
const reason = 'Invented: fast trees in a long season, agreed with the owner'

describe('a rule that was changed', () => {
  const rules = rulesWith({ allowedYoung: 0.35 })
  const plan = planInventory(inventory, { date: '2026-11-25', rules, reasons: { allowedYoung: reason } })
  const offer = firstVisit(estimatePlan(plan))

  it.each(['cut-plan', 'client-report', 'work-order', 'specification'] as const)(
    'is printed with its reason in the %s',
    (kind) => {
      const [sheet] = describeDocuments([kind], plan, offer)
      const words = sheet!.rows
        .flat()
        .filter((cell) => typeof cell === 'string')
        .join(' ')
        .replace(/\s+/g, ' ')
      expect(words).toContain(reason)
      expect(words).toContain('Allowed removal, young')
    }
  )
})
