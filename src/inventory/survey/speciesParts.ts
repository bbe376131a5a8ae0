import { isBlank, type Cell } from '../../../shared/cells'
import { fold } from '../headers/fold'
import { columnValues } from '../headers/columnValues'
import type { AnswerFor } from './answers'
import type { HeaderRows, TableColumn } from './headerRows'
import { lettersOf, ownLetters, type SheetCells } from './sheetCells'

/** What a column says of a tree's kind: "Genus", "Species" beside it, "Cultivar", "Common name", "Botanical name". */
type Role = 'genus' | 'species' | 'cultivar' | 'common' | 'botanical'

/** The words of headers for each, folded; the likelier to be meant first. Common trade use, no source. */
const roles: readonly (readonly [Role, ReadonlySet<string>])[] = (
  [
    ['genus', 'genus gattung baumgattung gattungsname genre genero'],
    ['cultivar', 'cultivar cultivars cv cvar variety sorte sortenname variete variedad kultivar'],
    [
      'botanical',
      `botanical botanic scientific latin binomial botanischer botanische botanisch wissenschaftlicher
      wissenschaftliche wissenschaftlich lateinischer lateinische lateinisch botanique scientifique botanico
      cientifico latino lat bot wiss`
    ],
    [
      'common',
      `common vernacular trivial trivialname deutscher deutsche deutsch english commun francais usuel
      vernaculaire comun vulgar`
    ],
    [
      'species',
      'species sp spp epithet art artname baumart baumarten holzart gehoelzart geholzart essence espece especie'
    ]
  ] as const
).map(([role, words]) => [role, new Set(words.split(/\s+/))] as const)

/** Words that stand beside them and say nothing more. */
const beside = new Set('name names nom nombre of the tree trees baum arbre arbol specific del de'.split(' '))

function roleOf(name: string): Role | null {
  const words = fold(name)
    .split(/[^\p{L}]+/u)
    .filter((word) => word !== '' && !beside.has(word))
  const found = roles.find(([, known]) => words.some((word) => known.has(word)))
  return words.every((word) => roles.some(([, known]) => known.has(word))) ? (found?.[0] ?? null) : null
}

/** The columns that say something of a tree's kind, each in a way of its own. */
export type SpeciesParts = ReadonlyMap<Role, TableColumn>

const unusedAs = 'part of the species'

/** Share of numbers from which a column is codes and no names. House judgment. */
const mostNumbers = 0.2

function partsIn(
  { columns }: Pick<HeaderRows, 'columns'>,
  isTaken: (column: TableColumn) => boolean
): SpeciesParts {
  const found = new Map<Role, TableColumn>()
  for (const column of columns) {
    const role = isTaken(column) ? roleOf(column.name) : null
    if (role !== null && !found.has(role)) found.set(role, column)
  }
  // Beside both of its names, a third word for the kind is a code or a group.
  if (found.has('common') && found.has('botanical')) found.delete('species')
  if (found.has('genus') && found.has('species')) found.delete('botanical')
  return found
}

/**
 * The headers where two or more columns name the kind of a tree together, such as genus and species: one of them is the
 * column of the species, and the others are parts of it. What a person said of any of them stands.
 */
export function withSpeciesParts(
  sheet: SheetCells,
  header: HeaderRows,
  rows: readonly number[],
  answerFor: AnswerFor
): HeaderRows {
  const { columns, groups, names } = header
  if (groups !== null) return header
  const isOpen = ({ column, meaning: { field, unused } }: TableColumn): boolean =>
    (field === null || field === 'species') &&
    unused === null &&
    columnValues(rows.slice(0, 200).map((row) => sheet.rows[row]?.[column])).numeric < mostNumbers
  const may = columns.filter(({ name }) => roleOf(name) !== null)
  const parts = may.length < 2 ? new Map<Role, TableColumn>() : partsIn({ columns: may }, isOpen)
  const taken = columns.find(({ meaning }) => meaning.field === 'species')
  const all = [...parts.values()]
  if (all.length < 2 || (taken !== undefined && !all.includes(taken))) return header
  const isAnswered = all.some(({ column, name, title }) => {
    const letters = ownLetters(sheet, lettersOf(sheet, names, column))
    return answerFor(sheet.name, letters, name, `${title} ${name}`.trim())?.field !== undefined
  })
  if (isAnswered) return header
  const [first] = all.sort((a, b) => a.column - b.column)
  return {
    ...header,
    columns: columns.map((column): TableColumn => {
      if (!all.includes(column)) return column
      const meaning = { ...column.meaning, runnerUp: null, unit: null, girth: false }
      return column === first
        ? { ...column, meaning: { ...meaning, field: 'species', score: 1, confidence: 'sure', unused: null } }
        : {
            ...column,
            meaning: { ...meaning, field: null, score: 0, confidence: 'unsure', unused: unusedAs }
          }
    })
  }
}

const nothing =
  /^(?:[-–—?.]+|n\/?a|none|unknown|unk\.?|keine?|unbekannt|aucune?|inconnue?|ningun[oa]?|desconocid[oa])$/i

/** The name of a kind that the cells of a row give together. */
function nameOf(said: (role: Role) => string): string {
  const [genus, species, variety] = [said('genus'), said('species'), said('cultivar')]
  const whole = species.toLowerCase().startsWith(genus.toLowerCase())
  const isEpithet = genus !== '' && !whole && (/^(?:x\s|×|sp)/i.test(species) || !/\s/.test(species))
  const latin = said('botanical')
  const bare = isEpithet
    ? `${genus} ${species}`.trim()
    : genus === '' && latin !== ''
      ? latin
      : whole
        ? species
        : genus
  const common = said('common') !== '' ? said('common') : bare === species ? '' : isEpithet ? '' : species
  const cultivar = variety.replace(/^['‘"“](.*)['’"”]$/, '$1')
  const isIn = `${bare} ${common}`.toLowerCase().includes(cultivar.toLowerCase())
  const full = cultivar === '' || isIn ? bare : `${bare} '${cultivar}'`.trim()
  if (common === '' || common.toLowerCase() === full.toLowerCase()) return full
  return full === '' ? common : `${common} (${full})`
}

/** How the kind of a tree is put together in each row; null where one column gives it. */
export function speciesInRows(header: HeaderRows): ((row: readonly Cell[]) => readonly Cell[]) | null {
  const target = header.columns.find(({ meaning }) => meaning.field === 'species')
  if (target === undefined || !header.columns.some(({ meaning }) => meaning.unused === unusedAs)) return null
  const parts = partsIn(header, (column) => column === target || column.meaning.unused === unusedAs)
  return (row) => {
    const text = (role: Role): string => {
      const cell = row[parts.get(role)?.column ?? -1]
      const own = isBlank(cell) ? '' : String(cell).trim()
      return nothing.test(own) ? '' : own
    }
    const name = nameOf(text)
    if (name === '' || name === row[target.column]) return row
    const own = [...row]
    own[target.column] = name
    return own
  }
}
