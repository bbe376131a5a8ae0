import { percent, ratePercent } from '../../shared/words/percent'
import type { Limit } from '../../shared/words/rounding'

/** In the narrow pane a figure and its sign stay on one line. */
export const unbroken = (text: string): string => text.replace(/ (?=%)/g, '\u00a0')

/** A share in percent as every surface has it. */
export const panePercent = (share: number, limit?: Limit): string => unbroken(percent(share, limit))

/** A rate of tax with the digits that it has. */
export const paneRate = (rate: number): string => unbroken(ratePercent(rate))
