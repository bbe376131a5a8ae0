import { readHeaderText } from '../headers/headerText'
import { withField } from './columnsByUse'
import type { HeaderRows } from './headerRows'
import { plain } from './plain'
import type { SheetTable } from './sheetTables'

const namesOf = ({ header }: Pick<SheetTable, 'header'>): string =>
  header.columns.map(({ column, name }) => `${column} ${plain(name)}`).join('\n')

const treeAt = ({ columns }: HeaderRows): number =>
  columns.findIndex(({ meaning }) => meaning.field === 'tree')

/** Whether the column that names the trees is one of numbers by its header ("No."), and not "Tree". */
function isNumbered(header: HeaderRows): boolean {
  const name = header.columns[treeAt(header)]?.name ?? ''
  const { notions } = readHeaderText(name)
  return notions.has('id') && !notions.has('tree')
}

function isOnSeveral(tables: readonly SheetTable[], table: SheetTable): boolean {
  return tables.some((other) => other !== table && namesOf(other) === namesOf(table))
}

/**
 * Tables under the same headers, as on a sheet a zone, name their trees in the same column: where one of them does so by a number,
 * all do, and a column "Tree" beside it gives the kinds.
 */
export function inSameColumn<T extends SheetTable>(
  tables: readonly T[],
  withHeader: (table: T, header: HeaderRows) => T
): T[] {
  const models = new Map<string, HeaderRows>()
  for (const table of tables) {
    const names = namesOf(table)
    if (!models.has(names) && isNumbered(table.header)) models.set(names, table.header)
  }
  return tables.map((table) => {
    const model = models.get(namesOf(table))
    const { header } = table
    const [number, own] = [model === undefined ? -1 : treeAt(model), treeAt(header)]
    if (number < 0 || !isOnSeveral(tables, table)) return table
    const kinds = header.columns.findIndex(
      ({ name, meaning }, at) =>
        at !== number &&
        (meaning.field === 'tree' || meaning.field === null) &&
        readHeaderText(name).notions.has('tree')
    )
    const hasSpecies = header.columns.some(({ meaning }) => meaning.field === 'species')
    const named = own === number ? header : withField(header, number, 'tree')
    return withHeader(table, kinds < 0 || hasSpecies ? named : withField(named, kinds, 'species'))
  })
}
