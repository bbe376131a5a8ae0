import { palette } from '../../shared/palette'
import type { Format } from './sheet'

/** Looks that more than one document uses. */
export const looks = {
  title: { bold: true, size: 18, color: palette.moss, vertical: 'middle' },
  lead: { size: 10, color: palette.quiet },
  caution: { size: 10, color: palette.umber, fill: palette.cautionFill },
  section: { bold: true, size: 12, color: palette.moss },
  header: {
    bold: true,
    size: 9,
    color: palette.ink,
    fill: palette.headerFill,
    wrap: true,
    vertical: 'bottom',
    underline: palette.moss
  },
  body: { size: 10, color: palette.ink, vertical: 'middle' },
  groupEnd: { underline: palette.rule },
  total: { bold: true, size: 11, color: palette.ink, underline: palette.moss }
} as const satisfies Record<string, Format>
