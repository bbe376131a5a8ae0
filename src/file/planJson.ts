import { heightOfCut } from '../plan/cutWords'
import { countOf } from '../../shared/groupProblems'
import type { Problem } from '../../shared/problems'
import { treesNotPlanned } from '../plan/judged'
import type { Plan, TreePlan, Visit } from '../plan/plan'
import type { ChosenOffer } from '../price/offers'
import { printMoney } from '../../shared/money'
import { version } from '../../shared/version'

function visitJson(visit: Visit) {
  return {
    visit: visit.visit,
    year: visit.year,
    dose: visit.dose,
    cuts: visit.cuts.map((cut) => ({
      limb: cut.limb.id,
      kind: cut.kind,
      obligation: cut.obligation,
      must: cut.must,
      share: cut.share,
      count: cut.count,
      cutDiameterMm: cut.cutDiameter,
      heightM: heightOfCut(cut),
      distanceM: cut.distance,
      lateralMinMm: cut.lateralMin,
      dose: cut.dose,
      aspectRatio: cut.aspectRatio,
      projectedAspectRatio: cut.projectedAspectRatio,
      priority: cut.priority,
      nextPriority: cut.nextPriority,
      reason: cut.reason
    })),
    objective: visit.objective
  }
}

function clearanceJson({ clearance }: TreePlan) {
  if (clearance === null) return null
  const { required, reachedNow, reachedYear, heldBy } = clearance
  return { requiredM: required, reachedNowM: reachedNow, reachedYear, heldBy }
}

/** The permanent and temporary limbs, or in one sentence why none are chosen. */
function scaffoldJson({ scaffold }: TreePlan) {
  if (scaffold === null) return null
  const { lowest, lowestElsewhere, lowestFrom, spacing, limbs, withheld } = scaffold
  return {
    lowestPermanentM: lowest,
    lowestElsewhereM: lowestElsewhere,
    lowestFrom,
    spacingM: spacing,
    limbs: limbs.map(({ limb, permanence, goneBy, by, reason }) => ({
      limb: limb.id,
      permanence,
      goneBy,
      by,
      reason
    })),
    withheld
  }
}

function treeJson(tree: TreePlan) {
  return {
    tree: tree.tree.id,
    form: tree.form,
    leader: tree.leader.name === '' ? null : tree.leader.name,
    allowedRemoval: tree.allowedRemoval,
    liveCrownRatio: tree.liveCrownRatio,
    clearance: clearanceJson(tree),
    visits: tree.visits.map(visitJson),
    outcomes: tree.outcomes.map(({ limb, outcome, visit, year, heldBy, priority }) => ({
      limb: limb.id,
      outcome,
      visit,
      year,
      heldBy,
      priority
    })),
    scaffold: scaffoldJson(tree)
  }
}

function offerJson(offer: ChosenOffer) {
  const money = (amount: ChosenOffer['total']) => printMoney(amount, offer.minorDigits)
  const lineJson = ({ tree, visit, year, crewHours, price }: ChosenOffer['lines'][number]) => ({
    tree,
    visit,
    year,
    crewHours,
    price: money(price)
  })
  const { kind, forecast, waiting, budgetFigures } = offer
  return {
    currency: offer.currency,
    offer: kind,
    lines: offer.lines.map(lineJson),
    subtotal: money(offer.subtotal),
    tax: money(offer.tax),
    total: money(offer.total),
    forecast:
      forecast === null
        ? null
        : {
            low: money(forecast.low),
            high: money(forecast.high),
            years: forecast.by.map(({ year, lines, low, high }) => ({
              year,
              visits: lines.map(({ tree, visit }) => ({ tree, visit })),
              low: money(low),
              high: money(high)
            }))
          },
    waiting: waiting.map(({ tree, visit, year }) => ({ tree, visit, year })),
    budgetFigures: budgetFigures.map(({ tree, price }) => ({ tree, price: money(price) }))
  }
}

/** What each column was taken for; a column that is not used has no field. */
function columnsJson({ inventory }: Plan) {
  return inventory.matches
    .filter(({ header, field }) => header !== '' || field !== null)
    .map(({ sheet, letters, header, field, unit, girth, confidence, runnerUp }) => ({
      sheet,
      column: letters,
      header,
      field,
      unit,
      ...(girth && field !== null ? { measure: 'girth' } : {}),
      confidence,
      runnerUp
    }))
}

/** Limbs are all that the trees have, leaders and those that were not judged among them; cuts are those of all visits. */
function summaryJson(plan: Plan) {
  const { trees } = plan
  return {
    trees: trees.length,
    limbs: trees.reduce((sum, { tree }) => sum + tree.limbs.length, 0),
    cuts: trees.reduce((sum, { visits }) => sum + visits.reduce((all, { cuts }) => all + cuts.length, 0), 0),
    treesWithoutLimbs: trees.filter(({ tree }) => tree.limbs.length === 0).length,
    treesNotPlanned: treesNotPlanned(plan).length
  }
}

/** One a cause: the first cell, how many there are, and the sentence with what waits for it. */
function problemJson(found: Problem) {
  const { code, cell, message, remedy, waits } = found
  return {
    code,
    cell,
    count: countOf(found),
    message: waits === undefined ? message : `${message} ${waits}`,
    remedy
  }
}

/**
 * The plan and its offer as the command line prints them: trees in the inventory's order, fractions as numbers, money
 * as text, what is missing as null. A row is counted as the sheet counts it, from 1.
 */
export function planJson(plan: Plan, offer: ChosenOffer) {
  return {
    version,
    date: plan.date,
    summary: summaryJson(plan),
    trees: plan.trees.map(treeJson),
    unplanned: plan.unplanned.map(({ tree, row, reason }) => ({ tree, row, reason })),
    estimate: offerJson(offer),
    columns: columnsJson(plan),
    problems: plan.problems.map(problemJson)
  }
}
