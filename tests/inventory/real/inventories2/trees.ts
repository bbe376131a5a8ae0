import { limb, tree, type ExpectedTree } from '../expected'

/** The few invented trees that most of these inventories hold, each in another shape. */
type Rest = Parameters<typeof tree>[3]

export const young = { stage: 'young', vigor: 'good' } as const

/** Inches and feet: 30 ft high, its crown from 6 ft; trunk 7.2 in where it is given. */
export const maple = (id: string, limbs: readonly string[] = ['A', 'B'], rest: Rest = young): ExpectedTree =>
  tree(
    id,
    30,
    6,
    rest,
    ...[
      limb(limbs[0] ?? '', 4.1, 5, 7, 28),
      limb(limbs[1] ?? '', 2.7, 5.4, 6.5, 24),
      limb(limbs[2] ?? '', 3.2, 4.6, 9, 27)
    ].slice(0, limbs.length)
  )

/** Inches and feet: 33 ft high, its crown from 7 ft; trunk 8 in where it is given. */
export const oak = (id: string, limbs: readonly string[] = ['A', 'B'], rest: Rest = young): ExpectedTree =>
  tree(
    id,
    33,
    7,
    rest,
    ...[limb(limbs[0] ?? '', 4.4, 5.6, 8, 31), limb(limbs[1] ?? '', 3.1, 6, 7.5, 26)].slice(0, limbs.length)
  )

/** Centimeters and meters: 9.1 m high, its crown from 1.7 m; trunk 18 cm where it is given. */
export const lime = (id: string, limbs: readonly string[] = ['1', '2'], rest: Rest = young): ExpectedTree =>
  tree(
    id,
    9.1,
    1.7,
    rest,
    ...[limb(limbs[0] ?? '', 10.1, 12.4, 2, 8.6), limb(limbs[1] ?? '', 6.9, 13.2, 1.9, 7.5)].slice(
      0,
      limbs.length
    )
  )

/** Centimeters and meters: 10 m high, its crown from 2 m; trunk 21 cm where it is given. */
export const plane = (id: string, limbs: readonly string[] = ['1', '2'], rest: Rest = young): ExpectedTree =>
  tree(
    id,
    10,
    2,
    rest,
    ...[limb(limbs[0] ?? '', 11.2, 13.1, 2.4, 9.5), limb(limbs[1] ?? '', 7.7, 13.8, 2.2, 8.4)].slice(
      0,
      limbs.length
    )
  )

export const mapleTrunk: Rest = { ...young, trunk: 7.2 }
export const oakTrunk: Rest = { ...young, trunk: 8 }
export const limeTrunk: Rest = { ...young, trunk: 18 }
export const planeTrunk: Rest = { ...young, trunk: 21 }

/** The same tree, its first limb with included bark and its others without. */
export const barkOnFirst = (wanted: ExpectedTree): ExpectedTree => ({
  ...wanted,
  limbs: wanted.limbs.map((each, at) => ({ ...each, bark: at === 0 ? 'full' : 'none' }))
})

/** The same tree, none of its limbs with included bark. */
export const noBark = (wanted: ExpectedTree): ExpectedTree => ({
  ...wanted,
  limbs: wanted.limbs.map((each) => ({ ...each, bark: 'none' }))
})
