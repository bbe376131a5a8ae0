/** The permanent limbs of a tree, worked by hand: 3 % of a mature height of 20 m is 0.6 m between two of them. */
import { defaultRules } from '../../../shared/rules'
import { codesOf, judgedAs, plannedTree, reasonOf, type Row } from './trees'

// The upper third of a canopy from 2 m to 10 m starts at 7.33 m. The trunk grows 10.16 mm a year, an unpruned limb below
// the upper third 10.16·a, so that its ratio stays.
const low: Row = { id: 'L', d: 40, stem: 180, origin: 2.1, tip: 4, bearing: 0 }
const thickest: Row = { id: 'B', d: 90, stem: 170, origin: 3, bearing: 90 }
const near: Row = { id: 'C', d: 45, stem: 165, origin: 3.4, bearing: 200 }
const opposite: Row = { id: 'D', d: 70, stem: 160, origin: 4, bearing: 270 }
const above: Row = { id: 'E', d: 40, stem: 150, origin: 5, bearing: 100 }
const gaining: Row = { id: 'F', d: 60, stem: 90, origin: 6, bearing: 180 }
const high: Row = { id: 'G', d: 30, stem: 60, origin: 7.5, tip: 9, bearing: 0 }
const all = [low, thickest, near, opposite, above, gaining, high]

describe('permanent limbs by spacing', () => {
  const [tree] = plannedTree({}, all).trees

  it('takes the thickest that can be permanent, and those that keep 3 % of the mature height from it', () => {
    expect(tree!.scaffold).toMatchObject({
      lowest: 2.5,
      lowestFrom: 'clearance',
      spacing: 0.6,
      withheld: null
    })
    expect(judgedAs(tree!)).toEqual({
      // 40 + 5·10.16·40/180 = 51.3 mm is the first above 50.8 mm.
      L: 'temporary 2035',
      B: 'permanent',
      // 0.4 m from B; 45 + 3·10.16·45/165 = 53.3 mm.
      C: 'temporary 2033',
      // 1 m from B, on the other side.
      D: 'permanent',
      // 10° from B; 40 + 4·10.16·40/150 = 50.84 mm.
      E: 'temporary 2034',
      F: 'not judged',
      G: 'not judged'
    })
  })

  it('says why in the words of the trade', () => {
    expect(reasonOf(tree!, 'L')).toBe('starts at 2.1 m, below the lowest permanent limb at 2.5 m')
    expect(reasonOf(tree!, 'C')).toBe('starts 0.4 m from permanent limb B, less than 0.6 m')
    expect(reasonOf(tree!, 'E')).toBe('above permanent limb B on the same side')
    expect(reasonOf(tree!, 'F')).toBe('0.67 of its stem: reduced first')
    expect(reasonOf(tree!, 'G')).toBe('starts in the upper third of the canopy: chosen at a later visit')
  })

  it('does not depend on the order of the rows', () => {
    expect(judgedAs(plannedTree({}, [...all].reverse()).trees[0]!)).toEqual(judgedAs(tree!))
  })

  it('keeps a limb that starts exactly at the spacing, whatever the unit it was typed in', () => {
    const at = plannedTree({}, [thickest, { id: 'C', d: 45, origin: 3.6, bearing: 270 }]).trees[0]!
    expect(judgedAs(at)).toEqual({ B: 'permanent', C: 'permanent' })
  })
})

describe('the lowest permanent limb', () => {
  const east: Row = { id: 'B', d: 40, origin: 3, bearing: 90 }
  const west: Row = { id: 'C', d: 40, origin: 3.7, bearing: 270 }

  it('is where the owner says, whatever clearance is asked for', () => {
    const tree = plannedTree({ clearance: 4.2, lowest: 3.5 }, [east, west]).trees[0]!
    expect(tree.scaffold).toMatchObject({ lowest: 3.5, lowestElsewhere: 3.5, lowestFrom: 'owner' })
    expect(judgedAs(tree)['B']).toMatch(/^temporary/)
    expect(judgedAs(tree)['C']).toBe('permanent')
  })

  it('is the clearance on its side, and about 8 ft on the others', () => {
    const tree = plannedTree({ clearance: 4.2, side: 'E' }, [east, west]).trees[0]!
    // About 8 ft where no clearance is asked for: ISA consumer brochure, Pruning Young Trees.
    expect(tree.scaffold?.lowestElsewhere).toBeCloseTo(2.4384, 12)
    expect(judgedAs(tree)['B']).toMatch(/^temporary/)
    expect(judgedAs(tree)['C']).toBe('permanent')
  })

  it('is never higher elsewhere than where clearance is asked for', () => {
    const tree = plannedTree({ clearance: 2, side: 'E' }, [east, west]).trees[0]!
    expect(tree.scaffold).toMatchObject({ lowest: 2, lowestElsewhere: 2 })
  })
})

describe('limbs that cannot be permanent', () => {
  it('judges no limb that has decay or is broken, and none with included bark as permanent', () => {
    const tree = plannedTree({}, [
      { id: 'B', d: 60, origin: 3, bearing: 0, decay: 'yes' },
      { id: 'C', d: 60, origin: 4, bearing: 90, broken: 'yes' },
      { id: 'D', d: 40, origin: 5, bearing: 180, bark: 'full' },
      { id: 'E', d: 60, origin: 6, bearing: 270, bark: 'partial' }
    ]).trees[0]!
    expect(judgedAs(tree)).toEqual({
      B: 'not judged',
      C: 'not judged',
      D: expect.stringMatching(/^temporary/) as string,
      E: 'not judged'
    })
    expect(reasonOf(tree, 'E')).toMatch(/^partial bark inclusion; at 6 cm too thick/)
  })

  it('judges no limb on a limb, and does not space by it', () => {
    const tree = plannedTree({}, [
      { id: 'B', d: 70, origin: 3, bearing: 0 },
      { id: 'B1', d: 30, stem: 60, origin: 3.2, bearing: 180, parent: 'B' },
      { id: 'C', d: 50, origin: 3.7, bearing: 180 }
    ]).trees[0]!
    expect(judgedAs(tree)).toEqual({ B: 'permanent', B1: 'not judged', C: 'permanent' })
  })

  it('chooses none while the trunk is under 4 in, and lets the low ones go in time', () => {
    // On trees under 4 in of caliper every branch will be removed: EDIS EP276.
    const tree = plannedTree({ trunk: 95, stage: 'young' }, [
      { id: 'B', d: 20, stem: 80, origin: 2.2, bearing: 0 },
      { id: 'C', d: 20, stem: 75, origin: 3, bearing: 90 }
    ]).trees[0]!
    expect(judgedAs(tree)).toEqual({ B: expect.stringMatching(/^temporary/) as string, C: 'not judged' })
    expect(reasonOf(tree, 'C')).toBe('the trunk is under 10.2 cm: chosen once it is thicker')
  })

  it('does not call a low limb temporary that is too thick to come off at once', () => {
    const tree = plannedTree({}, [{ id: 'B', d: 80, stem: 170, origin: 2.1, bearing: 0 }]).trees[0]!
    expect(judgedAs(tree)).toEqual({ B: 'not judged' })
    expect(reasonOf(tree, 'B')).toContain('too thick to come off as a temporary limb')
  })
})

describe('what the survey says', () => {
  it('stands: a limb marked permanent stays, and one marked otherwise is temporary', () => {
    const tree = plannedTree({}, [
      { ...thickest, permanent: 'no', d: 48 },
      { ...near, permanent: 'yes' },
      opposite
    ]).trees[0]!
    expect(judgedAs(tree)).toMatchObject({ C: 'permanent', D: 'permanent' })
    expect(judgedAs(tree)['B']).toMatch(/^temporary/)
    expect(tree.scaffold!.limbs.map(({ by }) => by)).toEqual(['survey', 'survey', 'rules'])
  })

  it('spaces the others by a limb that is marked', () => {
    const tree = plannedTree({}, [
      { ...near, permanent: 'x' },
      { ...thickest, d: 50 }
    ]).trees[0]!
    expect(judgedAs(tree)['C']).toBe('permanent')
    expect(reasonOf(tree, 'B')).toBe('starts 0.4 m from permanent limb C, less than 0.6 m')
  })

  it('notes two marked limbs that do not keep the spacing, and keeps both', () => {
    const plan = plannedTree({}, [
      { ...thickest, permanent: 'yes' },
      { ...near, permanent: 'yes' }
    ])
    expect(judgedAs(plan.trees[0]!)).toEqual({ B: 'permanent', C: 'permanent' })
    const [note] = plan.problems.filter(({ code }) => code === 'permanent-close')
    expect(note!.message).toContain('start 0.4 m apart')
  })

  it('reads a role of permanent as a mark, and the column before the role', () => {
    const tree = plannedTree({ mature: null }, [
      { ...thickest, role: 'permanent' },
      { ...near, role: 'temporary', permanent: 'yes' }
    ])
    expect(judgedAs(tree.trees[0]!)).toEqual({ B: 'permanent', C: 'permanent' })
    expect(codesOf(tree)).toContain('permanent-temporary')
  })

  it('says that a limb marked permanent is dead, broken or lower than the lowest one', () => {
    const plan = plannedTree({}, [
      { ...thickest, permanent: 'yes', live: 'dead' },
      { ...opposite, permanent: 'yes', broken: 'yes' },
      { ...low, permanent: 'yes' }
    ])
    expect(codesOf(plan)).toEqual(expect.arrayContaining(['permanent-lost', 'permanent-low']))
  })
})

describe('where the survey does not allow a choice', () => {
  const rows = [{ ...thickest }, { ...opposite }]
  const withheld = (plan: ReturnType<typeof plannedTree>) => plan.trees[0]!.scaffold!

  it.each([
    ['mature height', { mature: null }, rows, 'To choose permanent limbs, add the mature height.'],
    [
      'clearance',
      { clearance: null },
      rows,
      'To choose permanent limbs, add the clearance needed (or the height of the lowest permanent limb).'
    ],
    [
      'bearing',
      {},
      [thickest, { ...opposite, bearing: null }],
      'To choose permanent limbs, add the bearing of limb D.'
    ],
    ['life stage', { stage: null }, rows, 'To choose permanent limbs, add the life stage.'],
    [
      'trunk',
      { trunk: null },
      [{ ...thickest, stem: 95, d: 40 }],
      'To choose permanent limbs, add the trunk diameter.'
    ],
    [
      'whole limb',
      {},
      [...rows, { ...near, origin: null }],
      'To choose permanent limbs, add what is missing of limb C.'
    ],
    ['limb', {}, [], 'To choose permanent limbs, add the limbs on its trunk.']
  ])('claims nothing without a %s, and says what to add', (_what, whole, limbs, sentence) => {
    const scaffold = withheld(plannedTree(whole, limbs))
    expect(scaffold.withheld).toBe(sentence)
    expect(scaffold.limbs).toEqual([])
  })

  it('claims nothing where a long stretch of the trunk bears no limb in the list', () => {
    // From 2.5 m up to the canopy's upper third at 7.3 m: with two limbs listed, most of it is bare.
    const problemsOnly = withheld(plannedTree({}, rows, { rules: defaultRules }))
    expect(problemsOnly.withheld).toBe(
      'To choose permanent limbs, add the other limbs of its trunk, of which long stretches bear none in the list.'
    )
    expect(problemsOnly.limbs).toEqual([])
    const whole = [4.5, 5.9].map((origin, at) => ({ id: `E${String(at)}`, d: 20, origin, bearing: 100 * at }))
    expect(withheld(plannedTree({}, [...rows, ...whole], { rules: defaultRules })).withheld).toBeNull()
  })

  it('chooses none on trees that have no few permanent limbs, or have them already', () => {
    expect(withheld(plannedTree({ form: 'excurrent' }, rows)).withheld).toMatch(/^An excurrent tree/)
    expect(withheld(plannedTree({ form: 'multi-stem' }, rows)).withheld).toMatch(/^A multi-stem tree/)
    expect(withheld(plannedTree({ stage: 'mature' }, rows)).withheld).toMatch(
      /^The scaffold of a mature tree/
    )
    expect(withheld(plannedTree({ stage: 'old' }, rows)).withheld).toMatch(/^The scaffold of an old tree/)
    expect(plannedTree({ form: 'palm' }, rows).trees[0]!.scaffold).toBeNull()
  })

  it('takes a thick stem at a union for the trunk that was not measured', () => {
    expect(withheld(plannedTree({ trunk: null }, rows)).withheld).toBeNull()
  })

  it('tells of it where a mature height or a mark is given, and not of every tree', () => {
    expect(codesOf(plannedTree({ mature: null }, rows))).not.toContain('scaffold-missing')
    expect(codesOf(plannedTree({ clearance: null }, rows))).toContain('scaffold-missing')
    expect(codesOf(plannedTree({ mature: null }, [{ ...thickest, permanent: 'yes' }]))).toContain(
      'scaffold-missing'
    )
  })
})
