/**
 * The rules of one visit written out once more, straight from the published description and without the engine: slow,
 * plain, and used only to check it. Heights in m, diameters in mm; no clearance, no limbs on limbs, nothing measured
 * beyond the six numbers of a limb.
 */
export interface HandLimb {
  d: number
  D: number
  origin: number
  tip: number
  bark: 'none' | 'partial' | 'full'
}

export interface HandTree {
  H: number
  base: number
  stage: 'young' | 'medium' | 'mature'
  allowed: number
  g: number
  years: number
  limbs: HandLimb[]
}

interface HandOption {
  next: number
  dose: number
  removes: boolean
  cut: boolean
  tip: number
}

/** A value on a boundary belongs to it within this. */
const slack = 1e-6

const clamp = (x: number): number => Math.min(1, Math.max(0, x))

export function handPriority(a: number, limb: HandLimb, tip: number, tree: HandTree): number {
  const { H, base } = tree
  const u = H - (H - base) / 3
  const A = Math.max(0, (a - 0.5) / 0.5)
  const R = Math.sqrt(clamp((H / 2 - limb.origin) / (H / 2)) * clamp((tip - u) / (H - u)))
  const B = { none: 0, partial: 0.5, full: 1 }[limb.bark]
  const T = clamp((tip / H - 0.8) / 0.2)
  return 100 * (0.45 * A + 0.3 * R + 0.15 * B + 0.1 * T)
}

const fading = [1, 2 / 3, 1 / 3, 0, 0, 0]

/** Ratio at the next visit when the share f is lost now and the tip is here then; a shortened limb may be overtopped. */
function nextRatio(limb: HandLimb, f: number, tip: number, tree: HandTree): number {
  const a = limb.d / limb.D
  const third = tree.H - (tree.H - tree.base) / 3
  const low = tip < third - slack
  const overtopped = f > 0 && (low || tip < (limb.origin + tree.H) / 2 - slack)
  const growth = overtopped ? tree.g * a * 0.5 : low ? tree.g * a : tree.g * Math.min(1, a / 0.8)
  let d = limb.d
  for (let year = 0; year < tree.years; year++) d += growth * (1 - f * fading[year]!)
  return d / (limb.D + tree.years * tree.g)
}

function shares(tree: HandTree): number[] {
  const top = [...tree.limbs].sort((a, b) => b.origin - a.origin || a.D - b.D)[0]!
  const sum = tree.limbs.reduce((all, { d }) => all + d * d, 0) + top.D ** 2
  const S = Math.max(sum, ...tree.limbs.map(({ d, D }) => D * D + d * d))
  return tree.limbs.map(({ d }) => (d * d) / S)
}

interface HandCut extends HandOption {
  c: number
  height: number
}

/** Points that a cut, or a step to a larger one, is to be worth: 2, and 1 for each 2 % of the tree's foliage. */
const forFoliage = (dose: number): number => Math.max(2, dose / 0.02)

function optionsOf(limb: HandLimb, share: number, tree: HandTree): HandOption[] {
  const left = nextRatio(limb, 0, limb.tip, tree)
  const retain = handPriority(left, limb, limb.tip, tree)
  const options: HandOption[] = [{ next: retain, dose: 0, removes: false, cut: false, tip: limb.tip }]
  const today = handPriority(limb.d / limb.D, limb, limb.tip, tree)
  const bark = { none: 0, partial: 7.5, full: 15 }[limb.bark]
  const settled = left <= 0.5 + slack && retain - bark <= 10 + slack
  if (today < 10 - slack || settled) return options
  const cuts = [...reductions(limb, share, tree)]
  if (mayBeRemoved(limb, tree))
    cuts.push({
      next: 0,
      dose: share,
      removes: true,
      cut: true,
      tip: limb.origin,
      c: limb.d,
      height: limb.origin
    })
  const offered: HandCut[] = []
  for (const cut of cuts.sort((a, b) => a.dose - b.dose)) {
    const size = today >= 40 - slack ? 0 : cut.c > 101.6 + slack ? 10 : cut.c > 50.8 + slack ? 5 : 0
    if (retain - cut.next < Math.max(size, forFoliage(cut.dose)) - slack) continue
    if (cut.height > 2.4 + slack && cut.c < 20 - slack && today < 20 - slack) continue
    const steps = offered.filter((smaller) => smaller.dose < cut.dose - slack)
    if (steps.every((one) => one.next - cut.next >= forFoliage(cut.dose - one.dose) - slack))
      offered.push(cut)
  }
  return [...options, ...offered]
}

function* reductions(limb: HandLimb, share: number, tree: HandTree): Generator<HandCut> {
  for (const eighths of tree.stage === 'mature' ? [1, 2] : [2, 3, 4, 5, 6]) {
    const f = eighths / 8
    const c = limb.d * Math.sqrt(f)
    const several = tree.stage === 'mature' && c > 50.8 + slack ? Math.ceil((c / 50.8) ** 2 - 1e-9) : 1
    const lateral = c > 50.8 + slack ? 1 / 2 : 1 / 3
    const rise = limb.tip - limb.origin
    const tip = limb.origin + rise * (several > 1 ? 1 - f : 1 - (1 - lateral) * Math.sqrt(f))
    const height = limb.origin + rise * (1 - Math.sqrt(f))
    if (c < 10 - slack || height < tree.base - slack || (tip - limb.origin) / rise < 1 / 3 - slack) continue
    const next = handPriority(nextRatio(limb, f, tip, tree), limb, tip, tree)
    yield { next, dose: f * share, removes: false, cut: true, tip, c: c / Math.sqrt(several), height }
  }
}

function mayBeRemoved(limb: HandLimb, tree: HandTree): boolean {
  if (tree.stage === 'young' && limb.d <= 25.4 + slack) return true
  if (limb.d / limb.D > 0.5 + slack || limb.d > 101.6 + slack) return false
  const third = tree.H - (tree.H - tree.base) / 3
  const crowded = tree.limbs.some(
    (other) => other !== limb && other.d > limb.d && Math.abs(other.origin - limb.origin) <= 0.3 + slack
  )
  return limb.bark !== 'none' || (limb.origin < tree.H / 2 && limb.tip > third) || crowded
}

/** Competes with the leader (a ratio above 0.60, from 0.70 with included bark codominant anyway) in the top quarter. */
function isCompetingLeader(limb: HandLimb, tree: HandTree): boolean {
  return limb.d / limb.D > 0.6 + slack && limb.tip >= 0.75 * tree.H - slack
}

const below = (from: number, to: number, line: number): number => clamp((line - from) / (to - from))

/** Least sum of squared next priorities over every combination that keeps every limit. */
export function handOptimum(tree: HandTree): number {
  const share = shares(tree)
  const options = tree.limbs.map((limb, at) => optionsOf(limb, share[at]!, tree))
  const line = tree.H - (tree.H - tree.base) / 3
  const leader = Math.max(0, 1 - share.reduce((a, b) => a + b, 0))
  const leaderFrom = Math.max(...tree.limbs.map(({ origin }) => origin), tree.base)
  const lowerShare = (chosen: HandOption[]): number => {
    let all = leader
    let low = leader * below(leaderFrom, tree.H, line)
    chosen.forEach((option, at) => {
      if (option.removes) return
      const left = share[at]! - option.dose
      all += left
      low += left * below(tree.limbs[at]!.origin, option.tip, line)
    })
    return low / all
  }
  const before = lowerShare(options.map((each) => each[0]!))
  const baseAfter = (chosen: HandOption[]): number => {
    const lowest = tree.limbs.map(({ origin }) => Math.max(tree.base, origin))
    const near = tree.base + 0.1524 + slack
    if (!lowest.some((low) => low <= near)) return tree.base
    const after = Math.min(leaderFrom, ...lowest.filter((_, at) => !chosen[at]!.removes))
    return after <= near ? tree.base : after
  }
  const leaders = tree.limbs.flatMap((limb, at) => (isCompetingLeader(limb, tree) ? [at] : []))
  let best = Infinity
  const walk = (at: number, chosen: HandOption[]): void => {
    if (at < options.length) {
      for (const option of options[at]!) walk(at + 1, [...chosen, option])
      return
    }
    if (chosen.reduce((all, { dose }) => all + dose, 0) > tree.allowed + 5e-10) return
    if (chosen.filter(({ cut }) => cut).length > 6) return
    if (leaders.length > 3 && leaders.filter((at) => chosen[at]!.cut).length > Math.ceil(leaders.length / 2))
      return
    if (lowerShare(chosen) < Math.min(0.5, before) - 1e-9) return
    if (baseAfter(chosen) > Math.max(tree.base, 0.4 * tree.H) + 1e-9) return
    best = Math.min(
      best,
      chosen.reduce((all, { next }) => all + next * next, 0)
    )
  }
  walk(0, [])
  return best
}
