/** The sentences of functions that gave no value, cell by cell, and the listeners for changes. */
import type { CellMessages } from './cellFunctions'

export interface MessageStore extends CellMessages {
  onChange(callback: () => void): void
  clear(): void
}

export function createMessages(): MessageStore {
  const kept = new Map<string, string>()
  const callbacks: (() => void)[] = []
  let told = false
  const tell = () => {
    if (told) return
    told = true
    setTimeout(() => {
      told = false
      for (const callback of callbacks) callback()
    })
  }
  const key = (sheetId: string, row: number, column: number) => `${sheetId} ${row} ${column}`
  return {
    set(sheetId, row, column, message) {
      const place = key(sheetId, row, column)
      if (message === null ? kept.delete(place) : kept.get(place) !== message) tell()
      if (message !== null) kept.set(place, message)
    },
    get: (sheetId, row, column) => kept.get(key(sheetId, row, column)) ?? null,
    onChange: (callback) => callbacks.push(callback),
    clear: () => kept.clear()
  }
}
