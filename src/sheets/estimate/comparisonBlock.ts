import { comparisonOf } from '../../price/comparison'
import type { Offer } from '../../price/offers'
import type { Plan } from '../../plan/plan'
import { looks } from '../looks'
import { palette } from '../../../shared/palette'
import { rateWidths, type SideBlock } from './estimateRates'

/** The averages of the estimate beside published figures, as they were when it was written; no block where there are none. */
export function comparisonBlock(plan: Plan, offer: Offer): SideBlock[] {
  const found = comparisonOf(plan, offer)
  if (found.length === 0) return []
  const width = rateWidths.length
  const look = (row: number, rows: number, format: SideBlock['formats'][number]['format']) => ({
    area: { row, column: 0, rows, columns: width },
    format
  })
  const center = {
    area: { row: 3, column: 1, rows: found.length, columns: 1 },
    format: { align: 'center' } as const
  }
  return [
    {
      rows: [
        ['Set against published figures'],
        ['Orders of size, not goals: other trees, other work, other years. They are as this was written.'],
        ['First visits offered', 'Here', 'Unit', 'Published', 'Source'],
        ...found.map(({ what, here, unit, published, source }) => [what, here, unit, published, source])
      ],
      formats: [
        look(0, 1, looks.section),
        look(1, 1, looks.lead),
        look(2, 1, looks.header),
        look(3, found.length, looks.body),
        center,
        { ...center, area: { ...center.area, column: 3 } },
        { area: { row: 3, column: 4, rows: found.length, columns: 1 }, format: { color: palette.quiet } }
      ],
      names: [],
      rules: []
    }
  ]
}
