import type { Field } from '../../../shared/columns'
import { columnValues } from '../headers/columnValues'
import { fold } from '../headers/fold'
import { readHeaderText } from '../headers/headerText'
import type { Notion } from '../headers/words/notion'
import type { SheetTable } from './sheetTables'

type Table = Pick<SheetTable, 'sheet' | 'header' | 'rows'>

/** What speaks of trees in a header or in the name of a sheet. */
const ofTrees: readonly Notion[] = [
  ...(['tree', 'trunk', 'dbh', 'gbh', 'breast', 'crown', 'crownBase', 'limb', 'leader', 'foliage'] as const),
  ...(['caliper', 'species', 'naming', 'bark', 'union', 'dieback', 'vigor'] as const)
]

function words(...lists: readonly string[]): ReadonlySet<string> {
  return new Set(lists.flatMap((list) => list.split(' ')))
}

/** Words of headers, folded, in four languages (common use, no source). */
const ofPeople = words(
  'student students pupil player patient employee person people child member participant firstname surname',
  'lastname birthday birthdate dob gender sex weight bmi vorname nachname schuler schueler spieler geschlecht',
  'geburtsdatum gewicht personal prenom eleve joueur sexe poids naissance alumno alumna jugador apellido apellidos',
  'sexo peso nacimiento'
)
const ofThings = words(
  'furniture item items product products article sku part parts mobel moebel artikel produkt teil meuble produit',
  'mueble articulo producto'
)
const ofThickness = words('thickness thick dicke starke staerke epaisseur espesor grosor')
const ofWidth = words('width breite largeur ancho anchura')
const ofLumber = words(
  'lumber board boards plank planks beam bf bdft brett bretter schnittholz planche tabla tablon'
)

/** What is measured of trees that stand, and hardly ever stands in a list of prices. */
const surveyed: readonly Field[] = [
  ...(['trunk', 'diameter', 'stem', 'origin', 'crownBase', 'vigor', 'stage', 'site', 'zone'] as const),
  ...(['clearance', 'dieback', 'limb'] as const)
]

/** What a table is a list of that names some of the columns of an inventory and holds no trees; null where it may hold trees. */
export type OtherList = 'a list of people' | 'a list of prices' | 'a bill of lumber' | 'a list of things'

export function otherList(table: Table): OtherList | null {
  const { sheet, header, rows } = table
  const { columns } = header
  const names = columns.map(({ name, group }) => `${group} ${name}`.trim())
  const notions = new Set(names.flatMap((name) => [...readHeaderText(name).notions]))
  const said = new Set(names.flatMap((name) => fold(name).split(/[^\p{L}]+/u)))
  const speaksOf = (list: ReadonlySet<string>): boolean => [...said].some((word) => list.has(word))
  const has = (...fields: readonly Field[]): boolean =>
    columns.some(({ meaning: { field } }) => field !== null && fields.includes(field))
  const cells = (column: number) => rows.slice(0, 200).map((row) => sheet.rows[row]?.[column])
  if (!notions.has('limb')) {
    const isSawn = speaksOf(ofThickness) && speaksOf(ofWidth) && !notions.has('tree') && !notions.has('dbh')
    if (isSawn && !has('height')) return 'a bill of lumber'
    if (speaksOf(ofLumber) && !has('height') && !notions.has('tree')) return 'a bill of lumber'
  }
  if (notions.has('money') && !has(...surveyed)) {
    const id = columns.find(({ meaning }) => meaning.field === 'tree')
    const kinds = id?.meaning.runnerUp === 'species'
    if (notions.has('count') || kinds || id === undefined) return 'a list of prices'
  }
  const isOfTrees =
    ofTrees.some((notion) => notions.has(notion)) || readHeaderText(sheet.name).notions.has('tree')
  if (isOfTrees || has('diameter', 'stem', 'stemBelow')) return null
  if (speaksOf(ofPeople)) return 'a list of people'
  const age = columns.find(({ name }) => readHeaderText(name).notions.has('age'))
  const named = notions.has('name')
  if (age !== undefined && named && columnValues(cells(age.column)).numeric > 0.8) return 'a list of people'
  return speaksOf(ofThings) ? 'a list of things' : null
}
