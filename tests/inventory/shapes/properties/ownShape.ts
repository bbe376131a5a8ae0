import { readSheets } from '../../../../src/inventory/readSheets'
import { surveys, type DrawnSurvey } from '../drawnSurvey'
import { millimeters, plainShape, sheetsOf } from '../shape'
import { property } from './property'

const isNear = (value: number | null, wanted: number): boolean =>
  value !== null && Math.abs(value - wanted) < 1e-9

function faultsOf(survey: DrawnSurvey): string[] {
  const { trees } = readSheets(sheetsOf(plainShape(survey)))
  const ids = trees.map(({ id }) => id).join()
  const drawn = survey.trees.map(({ values }) => String(values.tree)).join()
  if (ids !== drawn) return [`trees: ${ids} and not ${drawn}`]
  const faults: string[] = []
  const compare = (what: string, value: number | null, measured: unknown, unit: number): void => {
    const wanted = Number(measured) / unit
    if (!isNear(value, wanted)) faults.push(`${what}: ${String(value)} and not ${String(wanted)}`)
  }
  survey.trees.forEach(({ values, limbs }, at) => {
    const tree = trees[at]!
    compare('height', tree.height, values.height, millimeters.m)
    compare('crown base', tree.crownBase, values.crownBase, millimeters.m)
    if (survey.fields.includes('trunk')) compare('trunk', tree.trunk, values.trunk, 1)
    if (tree.stage !== values.stage || tree.vigor !== values.vigor) faults.push(`stage or vigor: ${tree.id}`)
    limbs.forEach((limb, index) => {
      const read = tree.limbs[index]
      if (read?.id !== String(limb.limb) || read.bark !== limb.bark) {
        faults.push(`limb: ${tree.id} ${String(limb.limb)}`)
        return
      }
      compare('diameter', read.diameter, limb.diameter, 1)
      compare('stem', read.stem, limb.stem, 1)
      compare('origin', read.origin, limb.origin, millimeters.m)
      compare('tip', read.tip, limb.tip, millimeters.m)
    })
  })
  return faults
}

export const ownShape = property({
  name: 'our own shape gives what was measured',
  drawn: surveys(),
  faultsOf,
  sheetsOf: plainShape,
  casesOf: () => 1,
  usual: 50,
  long: 10_000
})
