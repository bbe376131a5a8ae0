import type { Printed } from './commandOutput'

interface Wanted {
  column: string
  fields: string[]
  unit: string | null
  girth: boolean
}

/** `C trunk cm girth` taken apart; a last part `...` allows columns that are not named. */
function wantedColumns(list: string): { wanted: Wanted[]; others: boolean } {
  const parts = list.split(';').map((part) => part.trim())
  const wanted = parts
    .filter((part) => part !== '...' && part !== '')
    .map((part) => {
      const [column = '', fields = '', ...rest] = part.split(' ')
      const girth = rest.includes('girth')
      return { column, fields: fields.split('|'), unit: rest.find((word) => word !== 'girth') ?? null, girth }
    })
  return { wanted, others: parts.includes('...') }
}

/** Every column of a sheet is what it was expected to be, and no other is taken for a field. */
export function checkColumns({ columns }: Printed, sheet: string, list: string): void {
  const { wanted, others } = wantedColumns(list)
  const printed = (columns ?? []).filter((each) => sheet === '' || each.sheet === sheet)
  const meant = printed.map((each) => {
    const girth = /^(trunk|limb|stem)Girth$/.exec(each.field ?? '')?.[1]
    const field = girth === undefined ? (each.field ?? '-') : girth === 'limb' ? 'diameter' : girth
    return { ...each, field, girth: girth !== undefined || each.measure === 'girth' }
  })
  for (const { column, fields, unit, girth } of wanted) {
    const here = meant.filter((each) => each.column === column)
    const found = here.find(({ field }) => fields.includes(field))
    if (found === undefined && fields.includes('-') && here.every(({ field }) => field === '-')) continue
    expect({ column, fields: here.map(({ field }) => field) }).toEqual({
      column,
      fields: expect.arrayContaining([
        expect.stringMatching(new RegExp(`^(${fields.join('|')})$`))
      ]) as unknown
    })
    expect({ column, girth: found?.girth }).toEqual({ column, girth })
    if (unit !== null) expect({ column, unit: found?.unit }).toEqual({ column, unit })
  }
  const allowed = (column: string, field: string) =>
    field === '-' || wanted.some((each) => each.column === column && each.fields.includes(field))
  const strangers = others ? [] : meant.filter(({ column, field }) => !allowed(column, field))
  expect(strangers.map(({ column, header, field }) => ({ column, header, field }))).toEqual([])
}
