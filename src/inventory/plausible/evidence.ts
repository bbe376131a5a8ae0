import type { Limb, Tree } from '../inventory'

/** So many limbs of so many that were measured. */
interface Share {
  found: number
  of: number
}

/** A tree outside these heights by trunk diameters is asked about by itself (house judgment). */
const leastTimes = 10
const mostTimes = 250

/** A crown base this share of the height above the lowest union, and above every other, is asked about (house judgment). */
const clearlyAbove = 0.1

/** In a list of more limbs under one id they are no limbs of one tree, and comparing all of them would take too long. */
const limbsCompared = 2000

/** Whether two limbs of a tree are the same in everything that was measured of a union. */
function areAlike(one: Limb, other: Limb): boolean {
  return (
    one.diameter === other.diameter &&
    one.stem === other.stem &&
    one.origin === other.origin &&
    one.tip === other.tip &&
    one.bearing === other.bearing &&
    one.parent === other.parent &&
    one.stem !== null &&
    one.diameter !== null &&
    one.origin !== null &&
    one.tip !== null
  )
}

/** What the trees say together, gathered tree by tree; lengths as the model has them, mm and m. */
export class Evidence {
  /** Limbs thicker than their stem. */
  readonly thicker: Share = { found: 0, of: 0 }
  /** Limbs with the tip below the origin. */
  readonly drooping: Share = { found: 0, of: 0 }
  /** Tree height by trunk diameter, and the trunk diameters in mm. */
  readonly slenderness: number[] = []
  readonly trunks: number[] = []
  /** What stands above a union by the diameter of the stem there; gathered where no column gives trunks. */
  readonly aboveUnions: number[] = []
  /** The highest tip by the height of the tree. */
  readonly reaches: number[] = []
  readonly oddShapes: Tree[] = []
  readonly highCrowns: Tree[] = []
  readonly alike: (readonly [Tree, Limb, Limb])[] = []

  constructor(private readonly hasTrunks: boolean) {}

  look(tree: Tree): void {
    let highest = 0
    for (const limb of tree.limbs) {
      if (limb.dead || limb.role === 'leader') continue
      this.lookAtLimb(limb, tree.height)
      if (limb.tip !== null && limb.tip > highest) highest = limb.tip
    }
    this.lookAtShape(tree)
    if (tree.height !== null && highest > 0) this.reaches.push(highest / tree.height)
    if (isCrownAbove(tree)) this.highCrowns.push(tree)
    this.compare(tree)
  }

  private lookAtLimb({ diameter, stem, origin, tip }: Limb, height: number | null): void {
    if (diameter !== null && stem !== null) {
      this.thicker.of++
      if (diameter > stem) this.thicker.found++
    }
    if (origin === null) return
    if (tip !== null) {
      this.drooping.of++
      if (tip < origin) this.drooping.found++
    }
    if (!this.hasTrunks && height !== null && stem !== null && height > origin)
      this.aboveUnions.push(((height - origin) * 1000) / stem)
  }

  private lookAtShape(tree: Tree): void {
    if (tree.height === null || tree.trunk === null) return
    const times = (tree.height * 1000) / tree.trunk
    this.slenderness.push(times)
    this.trunks.push(tree.trunk)
    if (times < leastTimes || times > mostTimes) this.oddShapes.push(tree)
  }

  private compare(tree: Tree): void {
    const { limbs } = tree
    if (limbs.length > limbsCompared) return
    for (let at = 1; at < limbs.length; at++) {
      const limb = limbs[at]
      for (let before = 0; limb !== undefined && before < at; before++) {
        const other = limbs[before]
        if (other === undefined || other.origin !== limb.origin || !areAlike(limb, other)) continue
        this.alike.push([tree, other, limb])
        break
      }
    }
  }
}

function isCrownAbove({ crownBase, height, limbs }: Tree): boolean {
  if (crownBase === null || height === null || crownBase >= height) return false
  let lowest = Infinity
  for (const limb of limbs) {
    if (limb.dead || limb.role === 'leader' || limb.origin === null) continue
    if (limb.origin >= crownBase) return false
    lowest = Math.min(lowest, limb.origin)
  }
  return lowest < Infinity && crownBase - lowest > clearlyAbove * height
}
