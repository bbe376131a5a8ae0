import { allowedRemoval, visitsNeeded } from '../src/formulas/removal'
import { nextVisit } from '../src/formulas/time'
import type { LifeStage, Vigor } from '../shared/choices'
import { date, share, word } from './argument'
import { eachCell } from './runner'

const allowed = eachCell(
  [
    word('life_stage', 'lifeStage'),
    word('vigor', 'vigor'),
    share('removed_already', 0),
    share('local_limit', 1)
  ],
  (stage: LifeStage, vigor: Vigor, removed: number, limit: number) =>
    allowedRemoval(stage, vigor, removed, limit)
)

/**
 * Share of a tree's live foliage that may still come off this season: a ceiling, not a target.
 * @customfunction ALLOWEDREMOVAL
 * @param life_stage Life stage of the tree: planting, young, medium, mature or old.
 * @param vigor Vigor of the tree: good, fair or poor.
 * @param [removed_already] Share of the live foliage already removed this season, 0 to 1. 0 unless given.
 * @param [local_limit] Most that local rules allow in a season, 0 to 1; 0 allows nothing. No local limit unless given.
 * @returns A share from 0 to 1: planting and young 0.25, medium 0.20, mature 0.10, old 0.05; half of it in fair vigor, none in poor; capped by the local limit; less what is gone.
 * @example =LIMB.ALLOWEDREMOVAL("medium", "fair") gives 0.1
 * @source Colorado State University Extension GardenNotes, Pruning Mature Shade Trees; planting, Gilman, EDIS EP276. Old 0.05 and the half for fair vigor are common practice, no source.
 */
export function ALLOWEDREMOVAL(
  life_stage: unknown[][],
  vigor: unknown[][],
  removed_already?: unknown[][],
  local_limit?: unknown[][]
): unknown[][] {
  return allowed({ life_stage, vigor, removed_already, local_limit })
}

const visits = eachCell([share('needed_removal'), share('allowed_removal')], visitsNeeded)

/**
 * Whole visits that a removal takes when each may take no more than the allowance.
 * @customfunction VISITSNEEDED
 * @param needed_removal Share of the live foliage that should come off in all, 0 to 1.
 * @param allowed_removal Share that may come off at one visit, 0 to 1, as ALLOWEDREMOVAL gives it.
 * @returns A whole number. Regrowth between visits is left out.
 * @example =LIMB.VISITSNEEDED(0.42, 0.2) gives 3
 * @source Arithmetic; spreading a removal over visits as in Gilman, EDIS EP276, UF/IFAS.
 */
export function VISITSNEEDED(needed_removal: unknown[][], allowed_removal: unknown[][]): unknown[][] {
  return visits({ needed_removal, allowed_removal })
}

const next = eachCell(
  [date('last_visit'), word('life_stage', 'lifeStage')],
  (last: number, stage: LifeStage) => nextVisit(last, stage)
)

/**
 * Date of the next visit from the last one and the life stage; format the cell as a date.
 * @customfunction NEXTVISIT
 * @param last_visit Date of the last visit: a date cell, or a text such as 2024-03-31.
 * @param life_stage Life stage of the tree: planting, young, medium, mature or old.
 * @returns A date serial: 2 years on for planting and young, 3 for medium, 5 for mature and old trees. 29 February comes round on 28 February.
 * @example =LIMB.NEXTVISIT("2024-03-31", "young") gives 46112, which a date format shows as 31 March 2026
 * @example =LIMB.NEXTVISIT("2024-02-29", "medium") gives 46446, which a date format shows as 28 February 2027
 * @source Planting and young: Gilman, EDIS EP276, UF/IFAS. Medium: municipal plan, Orono MN. Mature: Miller & Sylvester 1981, J. Arboric. 7(4):109-112, second-hand. Old: common practice, no source.
 */
export function NEXTVISIT(last_visit: unknown[][], life_stage: unknown[][]): unknown[][] {
  return next({ last_visit, life_stage })
}
