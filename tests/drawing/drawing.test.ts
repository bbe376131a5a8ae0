import type { TreePlan } from '../../src/plan/plan'
import { drawnLooks, type LookName } from '../../src/drawing/drawnLooks'
import type { Drawing } from '../../src/drawing/shapes'
import { textWidth } from '../../src/drawing/labels/textSize'
import { toSvg } from '../../src/drawing/paint/toSvg'
import { inventedPlan, samplePlan, treeNamed } from './inventedTrees'
import { drawn, partOf, partsOf, pointsOf } from './measured'

const invented = inventedPlan()
const trees = [...samplePlan().trees, ...invented.trees]

interface Named {
  name: string
  drawing: Drawing
}

function everyDrawing(width: number): Named[] {
  return trees.flatMap((plan) =>
    [null, ...plan.visits].flatMap((visit) =>
      (['before', 'after'] as const).map((when) => ({
        name: `${plan.tree.id}, ${visit === null ? 'no visit' : visit.visit}, ${when}`,
        drawing: drawn(plan, visit, when, { width })
      }))
    )
  )
}

/** Drawn once, for the tests that look at all of them. */
const atPaneWidth = everyDrawing(304)

it('draws every tree of the sample and the invented ones with real numbers only', () => {
  for (const { drawing } of [...atPaneWidth, ...everyDrawing(520)]) {
    const places = drawing.shapes.flatMap(pointsOf)
    expect(places.length).toBeGreaterThan(0)
    expect(places.filter(({ x, y }) => !Number.isFinite(x + y))).toEqual([])
    expect(() => toSvg(drawing)).not.toThrow()
  }
})

it('refuses to write a place that is not a number', () => {
  const drawing = drawn(trees[0]!, null, 'before')
  const broken: Drawing = {
    ...drawing,
    shapes: [{ kind: 'line', from: { x: NaN, y: 0 }, to: { x: 1, y: 1 }, look: 'axis' }]
  }
  expect(() => toSvg(broken)).toThrow('not a number')
})

it('keeps every shape inside the picture', () => {
  for (const { name, drawing } of atPaneWidth) {
    const { width, height } = drawing
    const outside = drawing.shapes.filter((shape) =>
      pointsOf(shape).some(({ x, y }) => x < 0 || x > width || y < 0 || y > height)
    )
    expect([name, outside.map(({ look, depicts }) => depicts?.part ?? look)]).toEqual([name, []])
  }
})

it('keeps the names of limbs and the numbers of cuts apart on a tree with fifteen limbs', () => {
  const plan = treeNamed(invented, 'Many')
  for (const visit of plan.visits)
    for (const when of ['before', 'after'] as const) {
      const drawing = drawn(plan, visit, when)
      const boxes = [...partsOf(drawing, 'label'), ...partsOf(drawing, 'leader-label')].map((shape) => {
        if (shape.kind !== 'text') throw new Error('A label is a text.')
        const wide = textWidth(shape.text, shape.size, true)
        return {
          name: shape.text,
          left: shape.at.x - wide / 2,
          right: shape.at.x + wide / 2,
          top: shape.at.y - 8,
          foot: shape.at.y
        }
      })
      for (const shape of partsOf(drawing, 'badge')) {
        if (shape.kind !== 'circle') throw new Error('A badge is a circle.')
        const { center, radius } = shape
        boxes.push({
          name: `cut ${shape.depicts?.limb ?? ''}`,
          left: center.x - radius,
          right: center.x + radius,
          top: center.y - radius,
          foot: center.y + radius
        })
      }
      expect(boxes.length).toBeGreaterThan(12)
      for (const [index, a] of boxes.entries())
        for (const b of boxes.slice(index + 1)) {
          const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left)
          const high = Math.min(a.foot, b.foot) - Math.max(a.top, b.top)
          expect([a.name, b.name, wide > 1 && high > 1]).toEqual([a.name, b.name, false])
        }
    }
})

it('says in words who leads and every cut, before and after', () => {
  for (const plan of trees)
    for (const visit of plan.visits)
      for (const when of ['before', 'after'] as const) {
        const { alt } = drawn(plan, visit, when)
        expect(alt).toContain(`Tree ${plan.tree.id}, ${when} visit ${visit.visit}, ${visit.year}`)
        expect(alt).toContain(
          plan.leader.limb === null ? 'Leader: the trunk' : `Leader: limb ${plan.leader.name}`
        )
        for (const cut of visit.cuts) {
          const past = { reduce: 'reduced', remove: 'removed', raise: 'raised' }
          const done = when === 'before' ? cut.kind : past[cut.kind]
          expect(alt).toContain(`limb ${cut.limb.id}: ${done}`)
        }
        if (visit.cuts.length === 0) expect(alt).toContain('No cut is planned')
      }
})

it('says which limbs could not be drawn, and why there is no drawing', () => {
  expect(drawn(treeNamed(invented, 'No bearings'), null, 'before').alt).toContain('Not drawn: limb 4')
  const { alt, shapes } = drawn(treeNamed(invented, 'No height'), null, 'before')
  expect(alt).toContain('No drawing, because the height of the tree is not known')
  expect(shapes.every(({ kind }) => kind === 'text')).toBe(true)
})

it('says that no limbs are listed only where none is', () => {
  const words = (plan: TreePlan) =>
    drawn(plan, null, 'before')
      .shapes.map((shape) => (shape.kind === 'text' ? shape.text : ''))
      .join(' ')
  const bare = treeNamed(invented, 'Bare row')
  expect(words(bare)).toContain('No limbs are listed; crown')
  const [limb] = treeNamed(invented, 'No bearings').tree.limbs
  const unmeasured: TreePlan = { ...bare, tree: { ...bare.tree, limbs: [{ ...limb!, tip: null }] } }
  expect(words(unmeasured)).toContain('Crown sketched.')
  expect(words(unmeasured)).not.toContain('No limbs are listed')
})

it('fills the dose bar by the share of the allowance', () => {
  for (const plan of trees)
    for (const visit of plan.visits) {
      const drawing = drawn(plan, visit, 'before')
      const [dose, frame] = [partOf(drawing, 'dose'), partOf(drawing, 'allowance')]
      if (dose.kind !== 'rect' || frame.kind !== 'rect') throw new Error('Bars are rectangles.')
      const share = visit.allowedRemoval > 0 ? visit.dose / visit.allowedRemoval : 0
      expect(dose.width / frame.width).toBeCloseTo(share, 9)
    }
})

it('draws the rose by bearing, as long as the aspect ratio', () => {
  const plan = treeNamed(invented, 'Many')
  const visit = plan.visits[0]!
  const drawing = drawn(plan, visit, 'before')
  const rose = partOf(drawing, 'rose')
  if (rose.kind !== 'circle') throw new Error('The rose is a circle.')
  const spokes = partsOf(drawing, 'spoke')
  expect(spokes).toHaveLength(14)
  for (const spoke of spokes) {
    if (spoke.kind !== 'line') throw new Error('A spoke is a line.')
    const limb = plan.tree.limbs.find(({ id }) => id === spoke.depicts?.limb)!
    const { from, to } = spoke
    const bearing = ((Math.atan2(to.x - from.x, from.y - to.y) * 180) / Math.PI + 360) % 360
    expect(bearing).toBeCloseTo(limb.bearing!, 6)
    const length = Math.hypot(to.x - from.x, to.y - from.y) / rose.radius
    expect(length).toBeCloseTo(limb.diameter! / limb.stem!, 6)
  }
})

it('marks crown base, clearance and the upper third of the canopy where they are known', () => {
  const drawing = drawn(treeNamed(invented, 'Many'), null, 'before')
  const y = (part: string): number => pointsOf(partOf(drawing, part))[0]!.y
  const ground = pointsOf(drawing.shapes.find(({ look }) => look === 'ground')!)[0]!.y
  const perMeter = (ground - y('upper-third')) / 14
  expect((ground - y('crown-base')) / perMeter).toBeCloseTo(3, 6)
  expect((ground - y('clearance')) / perMeter).toBeCloseTo(4.5, 6)
  const third = pointsOf(partOf(drawing, 'upper-third'))
  expect((ground - third[1]!.y) / perMeter).toBeCloseTo(14 - 11 / 3, 6)
  expect(partsOf(drawn(treeNamed(invented, 'Limbs on limbs'), null, 'before'), 'clearance')).toHaveLength(0)
})

it('tells its meanings apart without color', () => {
  const meanings: LookName[] = [
    'trunk',
    'leader',
    'limb',
    'dead',
    'off',
    'cutBar',
    'crown',
    'crownBase',
    'clearance'
  ]
  const forms = meanings.map((name) => {
    const look: Record<string, unknown> = { ...drawnLooks[name] }
    look['fill'] =
      look['fill'] === undefined || look['fill'] === 'none'
        ? 'empty'
        : look['fill'] === 'paper'
          ? 'paper'
          : 'inked'
    look['stroke'] = look['stroke'] === undefined ? 'none' : 'inked'
    return JSON.stringify(Object.entries(look).sort(([a], [b]) => a.localeCompare(b)))
  })
  expect(new Set(forms).size).toBe(meanings.length)
})
