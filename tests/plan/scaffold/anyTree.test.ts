/** Properties of the scaffold of any tree. */
import fc from 'fast-check'
import { defaultRules } from '../../../shared/rules'
import { degreesApart } from '../../../src/plan/scaffold/spacing'
import { runs } from '../trees'
import { judgedAs, plannedTree, type Row, type Whole } from './trees'

const rarely = (value: string): fc.Arbitrary<string | null> =>
  fc.oneof({ weight: 6, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: fc.constant(value) })

const limb = fc
  .record({
    d: fc.integer({ min: 10, max: 140 }),
    stem: fc.integer({ min: 60, max: 200 }),
    origin: fc.integer({ min: 5, max: 95 }).map((tenths) => tenths / 10),
    rise: fc.integer({ min: 1, max: 40 }).map((tenths) => tenths / 10),
    bearing: fc.oneof(
      { weight: 9, arbitrary: fc.integer({ min: 0, max: 359 }) },
      { weight: 1, arbitrary: fc.constant(null) }
    ),
    permanent: fc.oneof(
      { weight: 6, arbitrary: fc.constant(null) },
      { weight: 1, arbitrary: fc.constantFrom('yes', 'no') }
    ),
    role: rarely('temporary'),
    bark: rarely('full'),
    decay: rarely('yes'),
    broken: rarely('yes')
  })
  .map(({ rise, ...row }): Omit<Row, 'id'> => ({ ...row, tip: Math.min(10, Number(row.origin) + rise) }))

const rows = fc
  .array(limb, { minLength: 1, maxLength: 9 })
  .map((limbs) => limbs.map((row, at): Row => ({ ...row, id: `L${String(at)}` })))

const whole: fc.Arbitrary<Whole> = fc.record({
  stage: fc.constantFrom('young', 'medium', 'planting', 'mature'),
  trunk: fc.constantFrom(90, 240, 240, 240, null),
  mature: fc.constantFrom(12, 20, 30, null),
  clearance: fc.constantFrom(2.5, 3, 4.2, null),
  side: fc.constantFrom('N', 'all', null),
  lowest: fc.constantFrom(null, null, 2, 4)
})

it('keeps the spacing among the limbs it chooses, keeps what the survey says and claims nothing without data', () => {
  let chosen = 0
  fc.assert(
    fc.property(whole, rows, (tree, limbs) => {
      const { scaffold } = plannedTree(tree, limbs, { visits: 1 }).trees[0]!
      const { limbs: judged, withheld, spacing } = scaffold!
      const byId = new Map(limbs.map((row) => [row.id, row]))
      const isMarked = (id: string): boolean => {
        const { permanent, role } = byId.get(id)!
        return permanent !== null || role !== null
      }
      if (
        tree.mature === null ||
        (tree.clearance === null && tree.lowest === null) ||
        tree.stage === 'mature'
      )
        expect(withheld).not.toBeNull()
      if (withheld !== null) expect(judged.every(({ limb: { id } }) => isMarked(id))).toBe(true)
      else expect(judged.map(({ limb: { id } }) => id)).toEqual(limbs.map(({ id }) => id))
      for (const {
        limb: { id },
        permanence,
        goneBy,
        reason
      } of judged) {
        expect(reason).not.toBe('')
        expect(goneBy !== null).toBe(permanence === 'temporary')
        if (goneBy !== null) expect(goneBy).toBeGreaterThanOrEqual(2030)
        if (byId.get(id)!.permanent === 'yes') expect(permanence).toBe('permanent')
        if (byId.get(id)!.permanent === 'no') expect(permanence).not.toBe('permanent')
      }
      const lasting = judged.filter(({ permanence }) => permanence === 'permanent')
      for (const one of lasting)
        for (const other of lasting) {
          if (one === other || (one.by === 'survey' && other.by === 'survey')) continue
          chosen++
          const apart = Math.abs(one.limb.origin! - other.limb.origin!)
          expect(apart).toBeGreaterThanOrEqual(spacing! - 1e-6)
          expect(degreesApart(one.limb.bearing!, other.limb.bearing!)).toBeGreaterThan(
            defaultRules.scaffoldSide
          )
        }
    }),
    runs(300)
  )
  expect(chosen).toBeGreaterThan(20)
})

it('does not depend on the order of the rows', () => {
  fc.assert(
    fc.property(whole, rows, fc.infiniteStream(fc.nat()), (tree, limbs, places) => {
      const shuffled = limbs
        .map((row) => ({ row, place: places.next().value as number }))
        .sort((a, b) => a.place - b.place)
        .map(({ row }) => row)
      const asTyped = plannedTree(tree, limbs, { visits: 1 }).trees[0]!
      const otherwise = plannedTree(tree, shuffled, { visits: 1 }).trees[0]!
      expect(judgedAs(otherwise)).toEqual(judgedAs(asTyped))
    }),
    runs(100)
  )
})

it('never removes a sound limb that is marked permanent, at any visit', () => {
  fc.assert(
    fc.property(whole, rows, (tree, limbs) => {
      const { visits } = plannedTree(tree, limbs).trees[0]!
      for (const { cuts } of visits)
        for (const {
          kind,
          limb: { permanent, broken }
        } of cuts)
          if (permanent === 'yes' && !broken) expect(kind).not.toBe('remove')
    }),
    runs(60)
  )
})
