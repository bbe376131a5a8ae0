import { dirname } from 'node:path'
import { cellAddress } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import { groupProblems } from '../../shared/groupProblems'
import { mostBytes, type StoredPicture } from '../../shared/pictures/storedPicture'
import type { Inventory } from '../inventory/inventory'
import { namedPhotographs, treeInRows } from '../inventory/photographs'
import type { TreePhotographs } from '../sheets/client-report/photographs'
import { unpackPicture } from './logo'
import { readPictureIn } from './pictureFile'
import type { PlannedFile } from './readPlannedFile'

/** Endings that a name may lack, as cameras number their files. */
const endings = ['', '.jpg', '.jpeg', '.png', '.JPG', '.JPEG', '.PNG'] as const

async function inFolder(folder: string, file: string): Promise<StoredPicture | string> {
  let first = ''
  for (const ending of /\.\w{2,5}$/.test(file) ? endings.slice(0, 1) : endings) {
    const read = await readPictureIn(folder, file + ending)
    if (typeof read !== 'string') return read
    if (first === '') first = read
  }
  return first
}

/**
 * Photographs of the trees wanted: the picture that stands in a row of a tree, else the file that a column names, which
 * lies beside the inventory or in a folder of it. What cannot be used is told.
 */
export async function findPhotographs(
  wanted: ReadonlySet<string>,
  inventory: Inventory,
  { pictures, sheets }: PlannedFile,
  path: string | null
): Promise<{ readonly photographs: TreePhotographs; readonly problems: readonly Problem[] }> {
  const photographs = new Map<string, StoredPicture>()
  const problems: Problem[] = []
  const treeOf = treeInRows(inventory)
  for (const found of pictures) {
    const { row, rows } = found.area
    const tree = treeOf(found.sheet, row, row + rows - 1)
    if (tree === null || !wanted.has(tree) || photographs.has(tree)) continue
    const unpacked = await unpackPicture(found)
    if (typeof unpacked !== 'string')
      photographs.set(tree, {
        ...unpacked.picture,
        bytes: async () => (await found.bytes(mostBytes)) ?? new Uint8Array()
      })
    else
      problems.push(
        problem('photo-unusable', cellAddress(row, found.area.column, found.sheet), {
          text: `on the sheet ${found.sheet}`,
          tree,
          why: unpacked
        })
      )
  }
  for (const { tree, file, cell } of path === null ? [] : namedPhotographs(inventory, sheets, wanted)) {
    if (photographs.has(tree)) continue
    const read = await inFolder(dirname(path ?? ''), file)
    if (typeof read !== 'string') photographs.set(tree, read)
    else problems.push(problem('photo-unusable', cell, { text: file, tree, why: read }))
  }
  return { photographs, problems: [...groupProblems(problems)] }
}
