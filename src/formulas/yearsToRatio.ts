import { refuse, type Refusal } from '../../shared/refusal'

/**
 * Years until a limb’s aspect ratio has come down to a goal, both growing by even increments: (d − a·D) / (a·G − g).
 * 0 where it is there already. Diameters and growth a year in one unit.
 *
 * Source: arithmetic of growth, the ratio projected and solved for the years.
 */
export function yearsToRatio(
  limb: number,
  stem: number,
  goal: number,
  limbGrowth: number,
  stemGrowth: number
): number | Refusal {
  if (limb / stem <= goal) return 0
  const closing = goal * stemGrowth - limbGrowth
  return closing > 0
    ? (limb - goal * stem) / closing
    : refuse('At this growth the limb never comes down to the goal: slow the limb, or the ratio stays.')
}
