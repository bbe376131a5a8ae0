import { drawBeforeAfter } from '../../src/drawing/beforeAfter'
import { drawTree } from '../../src/drawing/drawTree'
import type { Drawing } from '../../src/drawing/shapes'
import { samplePlan } from '../sheets/samplePlan'

const plan = samplePlan()
const pairs = plan.trees.flatMap((tree) => {
  const visit = tree.visits.find(({ cuts }) => cuts.length > 0)
  return visit === undefined ? [] : [{ tree, visit }]
})
const options = { width: 584, height: 470, system: plan.system, rules: plan.rules, palette: 'print' } as const

const texts = ({ shapes }: Drawing) => shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []))

test('holds both drawings whole: nothing stands beyond its edges', () => {
  for (const { tree, visit } of pairs) {
    const pair = drawBeforeAfter(tree, visit, options)
    for (const { at, size } of texts(pair)) {
      expect(at.y).toBeLessThanOrEqual(pair.height)
      expect(at.y - size).toBeGreaterThanOrEqual(-2)
      expect(at.x).toBeGreaterThanOrEqual(0)
      expect(at.x).toBeLessThanOrEqual(pair.width)
    }
  }
})

test('says what it takes for granted once, below both, and leaves the list of cuts to the page', () => {
  for (const { tree, visit } of pairs) {
    const words = texts(drawBeforeAfter(tree, visit, options)).map(({ text }) => text)
    const all = words.join(' ')
    expect(all.split('crown sketched').length).toBe(2)
    expect(words.filter((word) => /: (reduce|remove)/.test(word))).toEqual([])
  }
})

test('long notes make it higher instead of running out of it', () => {
  const { tree, visit } = pairs[0]!
  const held = visit.limbs.map((state, index) => ({
    ...state,
    decision: 'hold' as const,
    limb: { ...state.limb, id: `a limb with a very long invented name, number ${String(index)}` }
  }))
  const many = { ...visit, limbs: [...held, ...held, ...held] }
  const short = drawBeforeAfter(tree, visit, options)
  const long = drawBeforeAfter(tree, many, options)
  expect(long.height).toBeGreaterThan(short.height)
  const lowest = Math.max(...texts(long).map(({ at }) => at.y))
  expect(lowest).toBeLessThanOrEqual(long.height)
})

test('the tree gets the room that the list of cuts would take', () => {
  const ground = (drawing: Drawing) => {
    const line = drawing.shapes.find(({ look, kind }) => look === 'ground' && kind === 'line')
    return (line as Extract<typeof line, { kind: 'line' }>).from.y
  }
  for (const { tree, visit } of pairs) {
    const alone = drawTree(tree, visit, { ...options, width: 285, when: 'before' })
    expect(ground(drawBeforeAfter(tree, visit, options))).toBeGreaterThan(ground(alone))
  }
})
