/** The documents say which limbs are permanent, and by when the temporary ones go. */
import { estimatePlan } from '../../src/price/estimatePlan'
import { wholeProgram } from '../../src/price/offers'
import { describeDocuments, planDocuments } from '../../src/sheets/describeDocuments'
import { whyItNeeds } from '../../src/sheets/client-report/clientReportWords'
import { specifyTree } from '../../src/sheets/specification/specificationTree'
import { planJson } from '../../src/file/planJson'
import { planText } from '../../src/file/planText'
import { plannedTree, type Row } from '../plan/scaffold/trees'

// L passes 50.8 mm in 2035, as its trunk grows 10.16 mm a year and it 10.16·40/180; D keeps 1 m from B, C does not.
const rows: Row[] = [
  { id: 'L', d: 40, stem: 180, origin: 2.1, tip: 4, bearing: 0 },
  { id: 'B', d: 90, stem: 170, origin: 3, tip: 9.6, bearing: 90 },
  { id: 'C', d: 45, stem: 165, origin: 3.4, bearing: 200 },
  { id: 'D', d: 70, stem: 160, origin: 4, bearing: 270 }
]
const plan = plannedTree({ clearance: null, lowest: 2.5 }, rows)
const bare = plannedTree({ mature: null }, rows)
const estimate = wholeProgram(estimatePlan(plan))

const textsOf = (of: typeof plan): string =>
  describeDocuments(planDocuments, of, wholeProgram(estimatePlan(of)))
    .flatMap(({ rows: content }) => content.flat())
    .filter((cell): cell is string => typeof cell === 'string')
    .join('\n')

describe('a scaffold on paper', () => {
  it('stands limb by limb on the cut plan, with the year and the reason', () => {
    const texts = textsOf(plan)
    expect(texts).toContain('Permanent and temporary limbs')
    expect(texts).toContain('Temporary, goes by 2035')
    expect(texts).toContain('Starts 0.4 m from permanent limb B, less than 0.6 m')
  })

  it('stands in the specification, for the crew and for the client', () => {
    const clause = specifyTree(plan.trees[0]!, plan.system).clauses.find(
      ({ label }) => label === 'Permanent limbs'
    )
    expect(clause!.lines).toEqual([
      'Limbs B and D: permanent, not to be removed.',
      'Temporary, to be removed in time: limb C by 2033 and limb L by 2035.'
    ])
    expect(textsOf(plan).replaceAll('\n', ' ')).toContain('Limbs B and D are permanent, not to be removed.')
    expect(whyItNeeds(plan.trees[0]!, plan.trees[0]!.visits[0]!)).toContain(
      'Limbs B and D are to stay for good. Temporary limbs go in time: limb C by 2033 and limb L by 2035.'
    )
  })

  it('is in the reason of the cut that ends a temporary limb', () => {
    const cuts = plan.trees[0]!.visits.flatMap((visit) => visit.cuts)
    const cut = cuts.find(({ limb }) => limb.id === 'C')!
    expect(cut.reason).toContain('Removed (temporary, goes by 2033)')
  })

  it('stands in the text and the JSON of the command line', () => {
    expect(planText(plan, estimate)).toContain('Limbs B and D are permanent, not to be removed.')
    const { scaffold } = planJson(plan, estimate).trees[0]!
    expect(scaffold).toMatchObject({
      lowestPermanentM: 2.5,
      lowestFrom: 'owner',
      spacingM: 0.6,
      withheld: null
    })
    expect(scaffold!.limbs[0]).toEqual({
      limb: 'L',
      permanence: 'temporary',
      goneBy: 2035,
      by: 'rules',
      reason: 'starts at 2.1 m, below the lowest permanent limb at 2.5 m'
    })
  })
})

describe('a scaffold that the survey does not allow', () => {
  it('is one sentence on the cut plan and in the text, and nothing for the client', () => {
    const sentence = 'To choose permanent limbs, add the mature height.'
    expect(textsOf(bare).split(sentence)).toHaveLength(2)
    expect(planText(bare, wholeProgram(estimatePlan(bare)))).toContain(sentence)
    expect(whyItNeeds(bare.trees[0]!, bare.trees[0]!.visits[0]!)).not.toMatch(
      /permanent|temporary|stay for good/
    )
    expect(planJson(bare, wholeProgram(estimatePlan(bare))).trees[0]!.scaffold!.withheld).toBe(sentence)
  })
})
