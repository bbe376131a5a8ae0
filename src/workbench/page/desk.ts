/** The workbench as a whole: the grid with the add-in's functions, the book behind it, and the host for the pane. */
import { isRefusal } from '../../../shared/refusal'
import { isErrorText } from '../../../shared/cells'
import type { Book } from '../book'
import type { BookContents } from '../files/contents'
import { openFile } from '../files/openFile'
import { saveFile } from '../files/saveFile'
import { registerFunctions } from '../grid/cellFunctions'
import { createContext, type GridContext } from '../grid/context'
import { noExtras } from '../grid/extras'
import { createGridBook } from '../grid/gridBook'
import { showOnHover } from '../grid/hovering'
import { createMessages } from '../grid/messages'
import { dressBook, gatherContents, openContents } from '../grid/openBook'
import { gridDrawn, startGrid } from '../grid/univer'
import type { LoadedFunctions } from './functionsFile'

export interface Desk {
  book: Book
  fileName(): string
  /** The selected cell's error and its sentence, or null. */
  selectedMessage(): { code: string; message: string } | null
  onMessage(callback: () => void): void
  dark(on: boolean): void
  /** Takes over what is being typed in a cell, so that a command sees it. */
  finishEditing(): Promise<void>
  open(contents: BookContents): void
  /** A file that the user chose: a remark, or why it was not opened. */
  openFile(name: string, bytes: Uint8Array): Promise<{ opened: boolean; sentence: string }>
  save(): Promise<Uint8Array>
}

export async function createDesk(
  container: HTMLElement,
  dark: boolean,
  functions: LoadedFunctions,
  first: BookContents
): Promise<Desk> {
  const grid = startGrid(container, dark)
  const extras = noExtras()
  const messages = createMessages()
  let name = first.name

  openContents(grid, extras, first)
  const context: GridContext = createContext(grid, extras)
  registerFunctions(grid, functions.entries, functions.bodies, messages)
  const book = createGridBook(context)
  dressBook(context, book, first)
  grid.api.getFormula().executeCalculation()

  const messageAt = (sheetId: string, row: number, column: number) => {
    const message = messages.get(sheetId, row, column)
    if (message === null) return null
    const code = book.values(sheetId, { row, column, rows: 1, columns: 1 })[0]?.[0]
    return isErrorText(code) ? { code: String(code), message } : null
  }
  await gridDrawn(grid)
  showOnHover(context, messageAt)

  const open = (contents: BookContents) => {
    messages.clear()
    name = contents.name
    openContents(grid, extras, contents)
    dressBook(context, book, contents)
  }
  return {
    book,
    fileName: () => name,
    selectedMessage() {
      const { sheetId, areas } = book.selection()
      const area = areas.at(-1)
      return area ? messageAt(sheetId, area.row, area.column) : null
    },
    onMessage: (callback) => messages.onChange(callback),
    dark: (on) => grid.api.toggleDarkMode(on),
    async finishEditing() {
      const workbook = grid.api.getActiveWorkbook()
      if (workbook?.isCellEditing()) await workbook.endEditingAsync(true)
    },
    open,
    async openFile(file, bytes) {
      const opened = await openFile(file, bytes)
      if (isRefusal(opened)) return { opened: false, sentence: opened.sentence }
      open(opened.contents)
      return { opened: true, sentence: opened.remark === '' ? `${file} is open.` : opened.remark }
    },
    async save() {
      await book.settled()
      return saveFile(gatherContents(context, book, name))
    }
  }
}
