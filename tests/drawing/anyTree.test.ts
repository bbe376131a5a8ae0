import fc from 'fast-check'
import type { Cell } from '../../shared/cells'
import { runs } from '../plan/trees'
import { drawTree } from '../../src/drawing/drawTree'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { toSvg } from '../../src/drawing/paint/toSvg'

const headers =
  'Tree | Trunk dia (cm) | Height (m) | Crown base (m) | Spread (m) | Life stage | Vigor | Clearance (m) | Limb | Role | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m) | Parent limb | Angle | Bearing | Live or dead | Length (m)'.split(
    ' | '
  )

const maybe = (least: number, most: number): fc.Arbitrary<number | null> =>
  fc.option(fc.double({ min: least, max: most, noNaN: true }), { nil: null, freq: 4 })

const limb = fc.record({
  role: fc.constantFrom(null, null, null, 'leader', 'temporary'),
  diameter: maybe(0.5, 60),
  stem: maybe(1, 80),
  origin: maybe(0, 25),
  tip: maybe(0, 30),
  parent: fc.constantFrom(null, null, null, 'L0', 'L1', 'L5'),
  angle: maybe(0, 180),
  bearing: maybe(0, 360),
  live: fc.constantFrom('live', 'live', 'dead'),
  length: maybe(0.1, 20)
})

const tree = fc.record({
  trunk: maybe(1, 120),
  height: maybe(1, 35),
  base: maybe(0, 20),
  spread: maybe(0.5, 25),
  stage: fc.constantFrom('planting', 'young', 'medium', 'mature', 'old', null),
  vigor: fc.constantFrom('good', 'fair', 'poor', null),
  clearance: maybe(1, 6),
  limbs: fc.array(limb, { maxLength: 15 })
})

it('draws whatever an inventory holds, without a place that is not a number', () => {
  let shapes = 0
  fc.assert(
    fc.property(
      tree,
      fc.integer({ min: 160, max: 900 }),
      fc.integer({ min: 160, max: 900 }),
      (one, width, height) => {
        const facts: Cell[] = [
          one.trunk,
          one.height,
          one.base,
          one.spread,
          one.stage,
          one.vigor,
          one.clearance
        ]
        const rows = one.limbs.map((each, index): Cell[] => [
          'T',
          ...facts,
          `L${index}`,
          each.role,
          each.diameter,
          each.stem,
          each.origin,
          each.tip,
          each.parent,
          each.angle,
          each.bearing,
          each.live,
          each.length
        ])
        const block = {
          rows: [headers, ...(rows.length > 0 ? rows : [['T', ...facts]])],
          sheet: 'Trees',
          top: 0,
          left: 0
        }
        const plan = planInventory(readInventory(block), { date: '2030-03-01' })
        for (const planned of plan.trees)
          for (const visit of [null, ...planned.visits])
            for (const when of ['before', 'after'] as const) {
              const drawing = drawTree(planned, visit, {
                width,
                height,
                when,
                system: 'cm-m',
                palette: 'color'
              })
              expect(toSvg(drawing)).not.toContain('NaN')
              shapes += drawing.shapes.length
            }
      }
    ),
    runs(150)
  )
  expect(shapes).toBeGreaterThan(5000)
})
