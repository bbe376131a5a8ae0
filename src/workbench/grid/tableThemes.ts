/** The looks of tables in the grid: one that leaves the cells as they are, and one with quiet bands. */
import type { IRangeThemeStyleJSON } from '@univerjs/preset-sheets-core'

interface TableTheme {
  name: string
  style: Omit<IRangeThemeStyleJSON, 'name'>
}

const ink = { rgb: '#1D2722' }
const edge = { s: 1, cl: { rgb: '#8D9389' } }

export const plainTheme = 'limb-plain'
export const bandedTheme = 'limb-banded'

export const tableThemes: TableTheme[] = [
  { name: plainTheme, style: { headerRowStyle: { cl: ink } } },
  {
    name: bandedTheme,
    style: {
      headerRowStyle: { cl: ink, bg: { rgb: '#E7EDE3' }, bd: { b: edge } },
      secondRowStyle: { bg: { rgb: '#F6F4EC' } },
      lastRowStyle: { bd: { b: edge } }
    }
  }
]
