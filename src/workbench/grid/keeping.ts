/** Page set-up, pictures, charts and settings: the grid shows none of them, so they are only kept and saved. */
import { generateRandomId } from '@univerjs/core'
import { BookFault, type Book, type Chart, type Picture } from '../book'
import type { GridContext } from './context'
import { extrasOf, type SheetExtras } from './extras'

type KeepingPart = Pick<
  Book,
  | 'page'
  | 'setPage'
  | 'pictures'
  | 'addPicture'
  | 'changePicture'
  | 'deletePicture'
  | 'charts'
  | 'addChart'
  | 'changeChart'
  | 'deleteChart'
  | 'settings'
  | 'setSetting'
>

/** Width and height in points of a PNG given as base64, at 96 dots an inch. */
export function pngSize(image: string): { width: number; height: number } {
  const head = atob(image.slice(0, 44))
  const number = (at: number) =>
    [0, 1, 2, 3].reduce((sum, index) => sum * 256 + (head.charCodeAt(at + index) || 0), 0)
  if (head.slice(1, 4) !== 'PNG') throw new BookFault('InvalidArgument', 'The picture is not a PNG.')
  return { width: number(16) * 0.75, height: number(20) * 0.75 }
}

export function keepingOf(context: GridContext): KeepingPart {
  const find = <Kind extends 'pictures' | 'charts'>(kind: Kind, id: string) => {
    for (const extras of context.extras.sheets.values()) {
      const list: SheetExtras[Kind] = extras[kind]
      const index = list.findIndex((item) => item.id === id)
      if (index >= 0) return { list, index }
    }
    throw new BookFault('ItemNotFound', `There is no ${kind === 'charts' ? 'chart' : 'picture'} ${id}.`)
  }
  return {
    page: (sheetId) => ({ ...extrasOf(context.extras, sheetId).page }),
    setPage(sheetId, change) {
      Object.assign(extrasOf(context.extras, sheetId).page, change)
    },
    pictures: (sheetId) => [...extrasOf(context.extras, sheetId).pictures],
    addPicture(sheetId, image) {
      context.sheet(sheetId)
      const picture = { id: generateRandomId(), sheetId, image, left: 0, top: 0, alt: '', ...pngSize(image) }
      extrasOf(context.extras, sheetId).pictures.push(picture)
      return picture
    },
    changePicture(id, change) {
      const { list, index } = find('pictures', id)
      list[index] = { ...(list[index] as Picture), ...change, id }
    },
    deletePicture(id) {
      const { list, index } = find('pictures', id)
      list.splice(index, 1)
    },
    charts: (sheetId) => [...extrasOf(context.extras, sheetId).charts],
    addChart(sheetId, chart) {
      context.sheet(sheetId)
      const added = { ...chart, id: generateRandomId(), sheetId }
      extrasOf(context.extras, sheetId).charts.push(added)
      return added
    },
    changeChart(id, change) {
      const { list, index } = find('charts', id)
      list[index] = { ...(list[index] as Chart), ...change, id }
    },
    deleteChart(id) {
      const { list, index } = find('charts', id)
      list.splice(index, 1)
    },
    settings: () => Object.fromEntries(context.extras.settings),
    setSetting(key, value) {
      if (value === undefined) context.extras.settings.delete(key)
      else context.extras.settings.set(key, value)
    }
  }
}
