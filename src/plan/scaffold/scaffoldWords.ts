import { counted, plural } from '../../../shared/words/counts'
import { listed, namedLimbs } from '../../../shared/words/lists'
import { capital } from '../../../shared/words/sentences'
import { firstOf } from '../../../shared/words/some'
import type { Limb } from '../../inventory/inventory'
import type { TreePlan } from '../plan'
import type { Scaffold, ScaffoldLimb } from './scaffold'

type Planned = Pick<TreePlan, 'scaffold'>

/** A scaffold is a value, and every document asks for its limbs one by one. */
const known = new WeakMap<Scaffold, ReadonlyMap<Limb, ScaffoldLimb>>()

/** What a limb is to the scaffold of its tree; null where nothing is known of it. */
export function scaffoldLimb({ scaffold }: Planned, limb: Limb): ScaffoldLimb | null {
  if (scaffold === null || scaffold.limbs.length === 0) return null
  let byLimb = known.get(scaffold)
  if (byLimb === undefined) {
    byLimb = new Map(scaffold.limbs.map((each) => [each.limb, each]))
    known.set(scaffold, byLimb)
  }
  return byLimb.get(limb) ?? null
}

/** "permanent", "temporary, goes by 2031" or "not judged". */
export function permanenceWords({ permanence, goneBy }: ScaffoldLimb): string {
  if (permanence === null) return 'not judged'
  return goneBy === null ? permanence : `${permanence}, goes by ${String(goneBy)}`
}

/** The permanent limbs of a tree. */
export function permanentLimbs({ scaffold }: Planned): readonly Limb[] {
  return (scaffold?.limbs ?? [])
    .filter(({ permanence }) => permanence === 'permanent')
    .map(({ limb }) => limb)
}

/** The temporary limbs of a tree, those that go first first. */
export function temporaryLimbs({ scaffold }: Planned): readonly ScaffoldLimb[] {
  return (scaffold?.limbs ?? [])
    .filter(({ permanence }) => permanence === 'temporary')
    .sort((a, b) => (a.goneBy ?? 0) - (b.goneBy ?? 0))
}

/** Limbs named one by one at most; more are counted. */
const named = 8

/** "limb L by 2031, limbs C and D by 2033"; empty where there are none. */
export function temporaryWords(limbs: readonly ScaffoldLimb[]): string {
  const byYear = new Map<number | null, Limb[]>()
  for (const { limb, goneBy } of limbs) byYear.set(goneBy, [...(byYear.get(goneBy) ?? []), limb])
  const words = [...byYear].map(
    ([year, some]) => `${fewLimbs(some)}${year === null ? '' : ` by ${String(year)}`}`
  )
  return firstOf(words, named)
}

/** "limbs B and C", or "12 limbs" where they are many. */
export function fewLimbs(limbs: readonly Limb[]): string {
  return limbs.length > named ? counted(limbs.length, 'limb') : namedLimbs(limbs)
}

/** For the crew: "Limb B is permanent, not to be removed. Temporary, to go in time: limb L by 2031."; empty where nothing is known. */
export function scaffoldSentence(plan: Planned): string {
  const permanent = permanentLimbs(plan)
  const temporary = temporaryLimbs(plan)
  const sentences: string[] = []
  if (permanent.length > 0)
    sentences.push(
      `${capital(fewLimbs(permanent))} ${plural(permanent.length, 'is', 'are')} permanent, not to be removed.`
    )
  if (temporary.length > 0) sentences.push(`Temporary, to go in time: ${temporaryWords(temporary)}.`)
  return sentences.join(' ')
}

/** Why no permanent limbs are chosen, each sentence once with the trees that it holds for. */
export function withheldSentences(
  trees: readonly TreePlan[]
): readonly { readonly sentence: string; readonly trees: readonly TreePlan[] }[] {
  const found = new Map<string, TreePlan[]>()
  for (const tree of trees) {
    const sentence = tree.scaffold?.withheld ?? null
    if (sentence === null || tree.tree.limbs.length === 0) continue
    const before = found.get(sentence)
    if (before === undefined) found.set(sentence, [tree])
    else before.push(tree)
  }
  return [...found].map(([sentence, some]) => ({ sentence, trees: some }))
}

/** The trees by their ids, the first few of many. */
export function treesNamed(trees: readonly TreePlan[]): string {
  const ids = trees.map(({ tree }) => tree.id)
  return `${plural(ids.length, 'tree')} ${ids.length <= named ? listed(ids) : firstOf(ids, named - 3)}`
}
