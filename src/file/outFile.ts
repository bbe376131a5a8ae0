import { readFile, writeFile } from 'node:fs/promises'
import { resolve } from 'node:path'
import { refuse, type Refusal } from '../../shared/refusal'
import { readOwnName, usersSheets } from '../sheets/ownSheets'
import { unpackValues } from './file-library/unpackValues'

/** True where every sheet of the workbook was written from a plan and none belongs to a user: it may be replaced. */
async function holdsOnlyOurs(bytes: Uint8Array): Promise<boolean> {
  const book = await unpackValues(bytes)
  if ('unreadable' in book) return false
  const own = new Set(
    book.names.flatMap(({ name, range }) => {
      const found = readOwnName(name, range)
      return found === null || usersSheets.has(found.kind) ? [] : [found.sheetName]
    })
  )
  return book.sheets.every((sheet) => own.has(sheet.name))
}

async function existing(path: string): Promise<Uint8Array | Refusal | null> {
  try {
    return await readFile(path)
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    return code === 'ENOENT' ? null : refuse(`${path} cannot be written (${code ?? String(error)}).`)
  }
}

/** Why nothing may be written to this path, or null. Nothing but an earlier plan of ours is ever replaced. */
export async function whyNotWritable(path: string, inventory: string | null): Promise<Refusal | null> {
  if (inventory !== null && resolve(path) === resolve(inventory))
    return refuse(`--out ${path} is the inventory itself: name another file for the plan.`)
  const found = await existing(path)
  if (found === null) return null
  if (!(found instanceof Uint8Array)) return found
  return (await holdsOnlyOurs(found))
    ? null
    : refuse(`${path} exists and holds other sheets than a plan's: name another file for the plan.`)
}

/** Writes the workbook; a refusal where the system does not allow it. */
export async function writeOut(path: string, bytes: Uint8Array): Promise<Refusal | null> {
  try {
    await writeFile(path, bytes)
    return null
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    return refuse(
      code === 'ENOENT'
        ? `${path} cannot be written: its folder does not exist.`
        : `${path} cannot be written (${code ?? String(error)}).`
    )
  }
}
