import type { Format } from './sheet'

/**
 * Our own few colours. Text on white or on the light fills keeps a contrast of at least 4.5 to 1 (WCAG 2.2, 1.4.3; a
 * test computes it), and nothing is said by colour alone, so that a black and white print says the same.
 */
export const palette = {
  ink: '#1d2722',
  quiet: '#4f5c54',
  moss: '#2c5a41',
  umber: '#7a3e16',
  headerFill: '#e3eae4',
  cautionFill: '#f7f1e6',
  inputFill: '#fbf8d9',
  noticeFill: '#f6dfc0',
  rule: '#9aa79d'
} as const

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
