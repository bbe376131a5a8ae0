import { refuse, type Refusal } from '../../shared/refusal'

/**
 * Live-crown ratio, uncompacted: (height − crown base) / height, 0 to 1. Both heights in the same unit.
 *
 * Source: Toney & Reeves 2009, West. J. Appl. For. 24(2):76-82 (uncompacted against compacted).
 */
export function liveCrownRatio(height: number, crownBase: number): number | Refusal {
  return crownBase > height
    ? refuse('The crown base is above the top of the tree: check both heights.')
    : (height - crownBase) / height
}

/** The highest crown base that keeps a live-crown ratio: height × (1 − ratio). */
export function crownBaseMax(height: number, ratio = 0.6): number {
  return height * (1 - ratio)
}
