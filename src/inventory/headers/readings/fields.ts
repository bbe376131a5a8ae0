import type { columns } from '../../../../shared/columns'

type Entry = (typeof columns)[number]

export type TreeField = Extract<Entry, { of: 'tree' }>['field']
export type LimbField = Extract<Entry, { of: 'limb' }>['field']
