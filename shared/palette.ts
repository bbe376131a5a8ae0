/**
 * Our own few colors. Text on white or on the light fills keeps a contrast of at least 4.5 to 1 (WCAG 2.2, 1.4.3; a
 * test computes it), and nothing is shown by color alone, so that a black and white print tells the same.
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
