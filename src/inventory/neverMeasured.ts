import type { OpenPart } from './openParts'

function isNeverMeasured({ readers, part: { rows } }: OpenPart): boolean {
  const stems = (['stem', 'stemBelow'] as const).flatMap((field) => readers.get(field) ?? [])
  if (rows.some((row) => stems.some((column) => !column.isBlank(row)))) return false
  const ids = readers.get('tree')
  return new Set(rows.flatMap((row) => ids?.read(row) ?? [])).size > 1
}

/** Whether several trees of a part have no stem beside any limb; looked for once, when it is first asked. */
export function neverMeasured(open: OpenPart): () => boolean {
  let found: boolean | null = null
  return () => (found ??= isNeverMeasured(open))
}
