import { readFile, stat } from 'node:fs/promises'
import { resolve } from 'node:path'
import writeFileAtomic from 'write-file-atomic'
import { refuse, type Refusal } from '../../shared/refusal'
import { readOwnName, usersSheets } from '../sheets/ownSheets'
import { isSealed } from './seal'
import { unpackValues } from './file-library/unpackValues'

/** Why a workbook that is there already is not simply replaced, as the end of a sentence, or null where it may be. */
async function whyKept(bytes: Uint8Array): Promise<string | null> {
  if (isSealed(bytes)) return null
  const book = await unpackValues(bytes)
  if ('unreadable' in book) return 'is no plan of ours'
  const found = book.names.flatMap(({ name, range }) => readOwnName(name, range) ?? [])
  const own = new Set(found.flatMap(({ kind, sheetName }) => (usersSheets.has(kind) ? [] : [sheetName])))
  // What we wrote was sealed: its documents, inventory, rules, rates or details may hold changes now.
  const withInventory = found.some(({ kind }) => usersSheets.has(kind))
  return own.size > 0 && (withInventory || book.sheets.every((sheet) => own.has(sheet.name)))
    ? 'was saved by another program since, perhaps with changes of yours'
    : 'holds other sheets than a plan\u2019s'
}

function unwritable(path: string, error: unknown): Refusal {
  const { code } = error as NodeJS.ErrnoException
  if (code === 'ENOENT') return refuse(`${path} cannot be written: its folder does not exist.`)
  if (code === 'ENOSPC') return refuse(`${path} cannot be written: there is no room left.`)
  return refuse(`${path} cannot be written (${code ?? String(error)}).`)
}

/** The bytes of the file at a path, null where there is none, or why nothing can be written there. */
async function existing(path: string): Promise<Uint8Array | Refusal | null> {
  try {
    if (!(await stat(path)).isFile())
      return refuse(`${path} is no file that can be replaced: name another file for the plan.`)
    return await readFile(path)
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ENOENT' ? null : unwritable(path, error)
  }
}

/** True where both paths lead to one file, through whatever links. */
async function isSameFile(path: string, other: string): Promise<boolean> {
  if (resolve(path) === resolve(other)) return true
  try {
    const [one, two] = await Promise.all([stat(path), stat(other)])
    return one.dev === two.dev && one.ino === two.ino && one.ino !== 0
  } catch {
    return false
  }
}

/**
 * Why nothing may be written to this path, or null. Without force nothing is replaced but an earlier plan of ours that
 * nobody has saved since; the inventory itself never is.
 */
export async function whyNotWritable(
  path: string,
  inventory: string | null,
  force: boolean
): Promise<Refusal | null> {
  if (inventory !== null && (await isSameFile(path, inventory)))
    return refuse(`--out ${path} is the inventory itself: name another file for the plan.`)
  const found = await existing(path)
  if (found === null) return null
  if (!(found instanceof Uint8Array)) return found
  const why = force ? null : await whyKept(found)
  return why === null
    ? null
    : refuse(`${path} ${why}: name another file for the plan, or add --force to replace it.`)
}

/**
 * Writes the workbook beside the path and puts it there when it is whole, so that a failure leaves what was there; a refusal
 * where the system does not allow it.
 */
export async function writeOut(path: string, bytes: Uint8Array): Promise<Refusal | null> {
  try {
    await writeFileAtomic(path, Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength))
    return null
  } catch (error) {
    return unwritable(path, error)
  }
}
