import { wholeProgram } from '../../src/price/offers'
import type { Cell } from '../../shared/cells'
import { toSvg } from '../../src/drawing/paint/toSvg'
import { planJson } from '../../src/file/planJson'
import { planText } from '../../src/file/planText'
import { readInventory } from '../../src/inventory/readInventory'
import type { Plan } from '../../src/plan/plan'
import { planInventory } from '../../src/plan/planInventory'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeDocuments, planDocuments } from '../../src/sheets/describeDocuments'
import { isFormula, type Content, type SheetDescription } from '../../src/sheets/sheet'

const broken = /.{0,60}\b(NaN|undefined|Infinity)\b.{0,40}/

function faultOf(cell: Content): string | null {
  if (typeof cell === 'number') return Number.isFinite(cell) ? null : `the number ${cell}`
  if (isFormula(cell))
    return (
      broken.exec(
        JSON.stringify(cell, (_key, value: unknown) => (Number.isNaN(value) ? 'NaN' : value))
      )?.[0] ?? null
    )
  return broken.exec(String(cell ?? ''))?.[0] ?? null
}

/** What a sheet shows that no sheet may show: in its cells, its pictures and the words that stand for them. */
function faultsOf({ kind, rows, pictures = [] }: SheetDescription): string[] {
  const cells = rows.flat().flatMap((cell) => faultOf(cell) ?? [])
  const drawn = pictures.flatMap((picture) => [picture.alt, toSvg(picture.draw())])
  const shown = drawn.flatMap((text) => broken.exec(text)?.[0] ?? [])
  return [...cells, ...shown].map((fault) => `${kind}: ${fault}`)
}

/** An inventory planned, priced, described as every document and drawn, with what is wrong with any of it. */
export function wholePath(rows: Cell[][]): { plan: Plan; sheets: SheetDescription[]; faults: string[] } {
  const inventory = readInventory({ rows, sheet: 'Survey', top: 0, left: 0 })
  const plan = planInventory(inventory, { date: '2026-03-01', timing: {} })
  const estimate = estimatePlan(plan)
  const sheets = describeDocuments(planDocuments, plan, wholeProgram(estimate))
  const told = [
    planText(plan, wholeProgram(estimate)),
    JSON.stringify(planJson(plan, wholeProgram(estimate)))
  ]
  const model = inventory.trees.flatMap(({ limbs, ...tree }) => [tree, ...limbs])
  const wrong = model.flatMap((values) =>
    Object.entries(values).flatMap(([key, value]) =>
      typeof value === 'number' && (!Number.isFinite(value) || Object.is(value, -0))
        ? [`model: ${key} ${value}`]
        : []
    )
  )
  const faults = [
    ...wrong,
    ...told.flatMap((text) => broken.exec(text)?.[0] ?? []),
    ...sheets.flatMap((sheet) => faultsOf(sheet))
  ]
  return { plan, sheets, faults }
}
