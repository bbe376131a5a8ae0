/** Picture files beside a file that names them. */
import { readFile, realpath, stat } from 'node:fs/promises'
import { isAbsolute, relative, resolve, sep } from 'node:path'
import { faultWords, mostBytes, pictureOf, type StoredPicture } from '../../shared/pictures/storedPicture'

/** Why a file cannot be used, after its name. */
type Why = string

function unread(error: unknown): Why {
  const { code } = error as NodeJS.ErrnoException
  if (code === 'ENOENT' || code === 'ENOTDIR') return 'is not there'
  return `could not be read (${code ?? String(error)})`
}

/** A drive of one letter is part of a path. */
const isAddress = (named: string): boolean => /^[a-z][a-z0-9+.-]+:/i.test(named)

const address = 'is an address and no file; nothing is fetched'

/** The picture in a file, or why it cannot be used. Its bytes are read again when it is drawn. */
export async function readPicture(path: string, named = path): Promise<StoredPicture | Why> {
  if (isAddress(named)) return address
  try {
    const found = await stat(path)
    if (!found.isFile()) return 'is no file'
    if (found.size > mostBytes) return faultWords.bytes
    const picture = pictureOf(
      new Uint8Array(await readFile(path)),
      async () => new Uint8Array(await readFile(path))
    )
    return typeof picture === 'string' ? faultWords[picture] : picture
  } catch (error) {
    return unread(error)
  }
}

/** Whether a path lies in a folder. */
function isIn(folder: string, path: string): boolean {
  const way = relative(folder, path)
  return way !== '' && way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way)
}

/** The same of a file that something in a folder names: nothing outside that folder is opened, by whatever way. */
export async function readPictureIn(folder: string, named: string): Promise<StoredPicture | Why> {
  if (isAddress(named)) return address
  const path = resolve(folder, named.replaceAll('\\', '/'))
  if (!isIn(resolve(folder), path))
    return 'lies outside the folder of the file that names it, and is not opened'
  try {
    const real = await realpath(path)
    if (!isIn(await realpath(folder), real))
      return 'lies outside the folder of the file that names it, and is not opened'
    return await readPicture(real)
  } catch (error) {
    return unread(error)
  }
}
