/** The workbook's names. The grid holds the visible ones, without the leading "=" of the book; the extras hold the others. */
import { quotedPrefix } from '../../../shared/cells'
import { generateRandomId } from '@univerjs/core'
import {
  IDefinedNamesService,
  RemoveDefinedNameMutation,
  SCOPE_WORKBOOK_VALUE_DEFINED_NAME,
  SetDefinedNameMutation,
  type IDefinedNamesServiceParam
} from '@univerjs/preset-sheets-core'
import { BookFault, type Book, type NameInfo } from '../book'
import type { GridContext } from './context'
import type { HiddenName } from './extras'

type NamePart = Pick<Book, 'names' | 'addName' | 'changeName' | 'deleteName'>

/** A plain reference to cells of one sheet: the sheet, quoted or not, and the cells. */
const reference = /^=('(?:[^']|'')+'|[\p{L}\p{N}_.]+)!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/u

/** A plain reference stands without "=" in the grid, any other formula with it. */
export function toGridFormula(formula: string): string {
  return reference.test(formula) ? formula.slice(1) : formula
}

function plainName(quoted: string): string {
  return quoted.startsWith("'") ? quoted.slice(1, -1).replaceAll("''", "'") : quoted
}

function hide(context: GridContext, { name, formula }: NameInfo): HiddenName {
  const found = reference.exec(formula)
  const sheet = found && context.workbook().getSheetBySheetName(plainName(found[1] ?? ''))
  if (!sheet) return { name, sheetId: null, rest: formula }
  return { name, sheetId: sheet.getSheetId(), rest: found[2] ?? '' }
}

function unhide(context: GridContext, { name, sheetId, rest }: HiddenName): NameInfo {
  if (sheetId === null) return { name, formula: rest, visible: false }
  const sheet = context.workbook().getSheetBySheetId(sheetId)
  return { name, formula: sheet ? `=${quotedPrefix(sheet.getName())}${rest}` : '=#REF!', visible: false }
}

const same = (a: string, b: string) => a.toLowerCase() === b.toLowerCase()

export function namesOf(context: GridContext): NamePart {
  const { extras } = context
  const stored = (): IDefinedNamesServiceParam[] =>
    Object.values(
      context.injector.get(IDefinedNamesService).getDefinedNameMap(context.workbook().getUnitId()) ?? {}
    )
  const info = ({ name, formulaOrRefString }: IDefinedNamesServiceParam): NameInfo => ({
    name,
    formula: formulaOrRefString.startsWith('=') ? formulaOrRefString : `=${formulaOrRefString}`,
    visible: true
  })
  const list = () => [...stored().map(info), ...extras.hiddenNames.map((name) => unhide(context, name))]
  const find = (name: string): NameInfo => {
    const found = list().find((item) => same(item.name, name))
    if (found === undefined) throw new BookFault('ItemNotFound', `There is no name ${name}.`)
    return found
  }
  const add = (name: NameInfo) => {
    if (!name.visible) extras.hiddenNames.push(hide(context, name))
    else
      context.mutate(SetDefinedNameMutation.id, null, {
        id: generateRandomId(),
        name: name.name,
        formulaOrRefString: toGridFormula(name.formula),
        localSheetId: SCOPE_WORKBOOK_VALUE_DEFINED_NAME
      })
  }
  const remove = (name: string) => {
    extras.hiddenNames = extras.hiddenNames.filter((item) => !same(item.name, name))
    const shown = stored().find((item) => same(item.name, name))
    if (shown) context.mutate(RemoveDefinedNameMutation.id, null, { ...shown })
  }
  return {
    names: list,
    addName(name) {
      if (list().some((item) => same(item.name, name.name)))
        throw new BookFault('ItemAlreadyExists', `There is a name ${name.name} already.`)
      add(name)
    },
    changeName(name, change) {
      const changed = { ...find(name), ...change }
      remove(name)
      add(changed)
    },
    deleteName(name) {
      find(name)
      remove(name)
    }
  }
}
