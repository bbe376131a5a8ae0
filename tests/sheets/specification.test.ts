import { showDiameter } from '../../shared/words/lengths'
import { rulesWith, type Rules } from '../../shared/rules'
import { judgedOf } from '../../src/plan/judged'
import { byUrgency, type Plan } from '../../src/plan/plan'
import { estimatePlan } from '../../src/price/estimatePlan'
import { firstVisit, wholeProgram } from '../../src/price/offers'
import { cautions } from '../../src/sheets/cautions'
import {
  describeSpecification,
  specificationText,
  specify
} from '../../src/sheets/specification/specification'
import { metricRows, planOf, samplePlan } from './samplePlan'
import { hasFormula, promises, runningText } from './sheetTexts'

const plan = samplePlan()
const programOf = (of: Plan) => wholeProgram(estimatePlan(of))
const offer = programOf(plan)
const text = specificationText(plan, offer)
const { general, trees, notSpecified } = specify(plan, offer)
const clause = (tree: string, label: RegExp) =>
  trees
    .find((part) => part.tree === tree)!
    .clauses.find((each) => label.test(each.label))!
    .lines.join('\n')

describe('the specification', () => {
  test('has a part for every tree that is offered, most urgent first, and names the others with the reason', () => {
    const offered = new Set(offer.lines.map(({ tree }) => tree))
    const [those, others] = [true, false].map((is) =>
      byUrgency(plan).filter(({ tree }) => offered.has(tree.id) === is)
    )
    expect(trees.map(({ tree }) => tree)).toEqual(those!.map(({ tree }) => tree.id))
    expect(others!.length).toBeGreaterThan(0)
    for (const { tree } of others!) expect(notSpecified.join(' ')).toMatch(new RegExp(`\\b${tree.id}\\b`))
    expect(notSpecified.join(' ')).toMatch(/T15: no limbs listed\./)
  })

  test('specifies no visit that is not offered, and names its year', () => {
    const first = specify(plan, firstVisit(estimatePlan(plan)))
    const later = plan.trees.find(
      ({ visits }) => visits.filter(({ cuts }) => cuts.length > 0).length > 1 && visits[0]!.cuts.length > 0
    )!
    const part = first.trees.find(({ tree }) => tree === later.tree.id)!
    const years = later.visits.slice(1).filter(({ cuts }) => cuts.length > 0)
    const interval = part.clauses.find(({ label }) => label === 'Interval')!.lines.join(' ')
    for (const { year } of years) expect(interval).toContain(String(year))
    expect(interval).toMatch(/^Recommended for .*, not part of this work\.$/)
  })

  test('states for each tree what a specification states: objective, parts, cuts, amount, interval', () => {
    for (const tree of plan.trees) {
      const part = trees.find(({ tree: id }) => id === tree.tree.id)
      if (part === undefined) continue
      const labels = part.clauses.map(({ label }) => label.replace(/, \d{4}$/, ''))
      const judged = judgedOf(tree) === 'some' ? ['Not judged'] : []
      const scaffold = (tree.scaffold?.limbs ?? []).some(({ permanence }) => permanence !== null)
      expect(labels).toEqual([
        ...['Objective', 'Leader kept', ...(scaffold ? ['Permanent limbs'] : [])],
        ...['Parts treated', 'Cuts', 'Amount'],
        ...[...judged, 'Interval']
      ])
    }
  })

  test('names every cut of the first visit by limb, kind and size', () => {
    for (const { tree, visits } of plan.trees) {
      const first = visits.find(({ cuts }) => cuts.length > 0)
      if (first === undefined) continue
      const cuts = clause(tree.id, /^Cuts/)
      const lines = cuts.split('\n').slice(1)
      expect(lines.length).toBe(first.cuts.length)
      first.cuts.forEach((cut, index) => {
        expect(lines[index]).toContain(`Limb ${cut.limb.id}`)
        const words = { reduce: 'reduction cut', remove: 'removal cut', raise: 'hanging side branches' }
        expect(lines[index]).toContain(words[cut.kind])
        if (cut.cutDiameter !== null)
          expect(lines[index]).toContain(`${showDiameter(cut.cutDiameter, 'in-ft')} across`)
      })
    }
  })

  test('counts the cuts by kind and gives their range of sizes', () => {
    expect(clause('T03', /^Cuts/)).toMatch(
      /^2 reduction cuts, 1 removal cut and 1 limb raised, 1\.7 in to 3\.7 in across\./
    )
    expect(clause('T02', /^Cuts/)).toMatch(/^1 reduction cut and 1 removal cut, /)
  })

  test('gives the ceiling of the visit and no more', () => {
    for (const { tree, visits } of plan.trees) {
      const first = visits.find(({ cuts }) => cuts.length > 0)
      if (first === undefined || !first.cuts.some(({ live }) => live)) continue
      const ceiling = Number(/^Not more than ([\d.]+) %/.exec(clause(tree.id, /^Amount/))![1]) / 100
      expect(ceiling).toBeLessThanOrEqual(first.allowedRemoval + 1e-9)
      expect(ceiling).toBeGreaterThan(first.allowedRemoval - 0.0011)
    }
  })

  test('allows no live wood where the cuts named are of dead wood only, as the work order does', () => {
    const dead = plan.trees.filter(({ visits }) => {
      const first = visits.find(({ cuts }) => cuts.length > 0)
      return first !== undefined && !first.cuts.some(({ live }) => live)
    })
    expect(dead.map(({ tree }) => tree.id)).toEqual(['T08'])
    for (const { tree } of dead)
      expect(clause(tree.id, /^Amount/)).toBe('Dead wood only: no live wood is cut at this visit.')
  })

  test('leaves out the height of a dead limb that was not measured', () => {
    const rows = metricRows(['B', null, 6, null, null, null]).map((row, at) => [
      ...row,
      ['Status', null, 'dead'][at] ?? null
    ])
    const [tree] = specify(planOf(rows), programOf(planOf(rows))).trees
    expect(tree!.clauses.find(({ label }) => label.startsWith('Cuts'))!.lines).toContain(
      'Limb B: removal cut of dead wood, 6 cm across.'
    )
  })

  test('keeps the leader and subordinates what competes with it', () => {
    expect(clause('T03', /^Objective/)).toMatch(
      /^Keep limb A as the one leader by subordinating limbs B and C/
    )
    expect(clause('T03', /^Objective/)).toContain('gain the clearance of 14 ft at limbs F and B')
    expect(clause('T11', /^Objective/)).toContain('Gain the clearance of 8 ft at limb D')
  })

  test('forbids topping and stripping, and argues the latter from foliage and not from wind', () => {
    const never = general.find(({ label }) => label === 'Not to be done')!.lines.join('\n')
    expect(never).toContain('Topping')
    expect(never).toContain('lower two-thirds')
    expect(never.toLowerCase()).not.toContain('wind')
  })

  test('assumes no season, and cites standards in their current edition', () => {
    expect(general.find(({ label }) => label === 'Timing')!.lines.join('\n')).toContain(
      'No season is assumed'
    )
    expect(general.find(({ label }) => label === 'Standards')!.lines.join('\n')).toContain('current edition')
    expect(text).not.toMatch(/\b(January|February|March|April|May|June|July|August) \d/)
  })

  test('names the sizes of large cuts by the rules in use, and the source only where they are its sizes', () => {
    const large = (rules?: Rules) =>
      specify({ ...plan, ...(rules === undefined ? {} : { rules }) }, offer)
        .general.find(({ label }) => label === 'Large cuts')!
        .lines.join('\n')
    expect(large()).toMatch(/^Cuts over 2 in .* over 4 in .*Colorado State University/)
    expect(large(rulesWith({ markedCut: 40 }))).toMatch(/^Cuts over 1\.6 in .*set on the Rules sheet/)
  })

  test('gives every caution and promises nothing beside them', () => {
    for (const caution of cautions) expect(text).toContain(caution)
    const named = 'ANSI Z133 (safety in arboricultural operations)'
    expect(promises(text, [...cautions, named])).toEqual([])
  })

  test('says why a tree has nothing specified', () => {
    const quiet = planOf(metricRows(['B', null, 3, 14, 2, 5]))
    expect(specificationText(quiet, programOf(quiet))).toMatch(/Tree \S+: no cut at present\./)
    expect(specificationText(quiet, programOf(quiet))).toContain('No work is planned')
  })

  test('says the same on the sheet as in the plain text', () => {
    const sheet = describeSpecification(plan, offer)
    const running = runningText(sheet)
    for (const { clauses, title } of trees) {
      expect(running).toContain(title)
      for (const { label, lines } of clauses) {
        expect(running).toContain(label)
        for (const line of lines) {
          expect(running).toContain(line.replace(/\s+/g, ' '))
          expect(text).toContain(line)
        }
      }
    }
    expect(sheet.rows.flat().some(hasFormula)).toBe(false)
    expect(sheet.rows[0]![0]).toBe('Specification')
  })

  test('is in centimeters and meters for a metric inventory', () => {
    const metric = specificationText(planOf(metricRows()), programOf(planOf(metricRows())))
    expect(metric).toMatch(/reduction cut, \d+(\.\d)? cm across at \d+(\.\d)? m above ground/)
    expect(metric.replaceAll(/\d in \(|\d cm/g, '')).not.toMatch(/\d ft\b/)
  })
})
