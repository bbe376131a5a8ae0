import { dirname } from 'node:path'
import { problem, type Problem } from '../../shared/problems'
import { faultWords, mostBytes, pictureOf, type StoredPicture } from '../../shared/pictures/storedPicture'
import { readDetails } from '../details/readDetails'
import type { FilePicture } from './file-library/fileBook'
import type { FoundPicture } from './file-library/picturesIn'
import type { Job } from './jobOf'
import { readPicture, readPictureIn } from './pictureFile'
import type { PlannedFile } from './readPlannedFile'

/** The logo of a job, and the pictures that its Job details sheet has when it is written again. */
export interface Logo {
  readonly logo: StoredPicture | null
  readonly kept: readonly FilePicture[]
  readonly problems: readonly Problem[]
}

/** A picture and the bytes as which it goes back into a file, or why it cannot be used. */
export async function unpackPicture(
  found: FoundPicture
): Promise<{ readonly picture: StoredPicture; readonly kept: FilePicture } | string> {
  const bytes = await found.bytes(mostBytes).catch(() => new Uint8Array())
  if (bytes === null) return faultWords.bytes
  const picture = bytes.length === 0 ? 'damaged' : pictureOf(bytes)
  if (typeof picture === 'string') return faultWords[picture]
  const { area, inset, width, height, alt } = found
  return { picture, kept: { bytes, kind: picture.kind, area, inset, width, height, alt } }
}

/** Beside the details, as high as some rows of theirs. */
const ownPlace = { row: 0, column: 3, rows: 6, columns: 4 } as const
const ownSize = { width: 240, height: 96 } as const

/** A logo from a file, as it is put on the sheet, so that the workbook can be planned again without the file. */
async function asOnSheet(logo: StoredPicture): Promise<FilePicture> {
  const scale = Math.min(1, ownSize.width / logo.width, ownSize.height / logo.height)
  return {
    bytes: await logo.bytes(),
    kind: logo.kind,
    area: ownPlace,
    width: Math.max(1, Math.round(logo.width * scale)),
    height: Math.max(1, Math.round(logo.height * scale)),
    alt: 'Logo'
  }
}

async function fromFile(read: Promise<StoredPicture | string>, said: string, cell: string): Promise<Logo> {
  const logo = await read
  if (typeof logo === 'string')
    return { logo: null, kept: [], problems: [problem('logo-unusable', cell, { text: said, why: logo })] }
  return { logo, kept: [await asOnSheet(logo)], problems: [] }
}

async function fromSheet(sheet: string, found: readonly FoundPicture[]): Promise<Logo> {
  const kept: FilePicture[] = []
  const problems: Problem[] = []
  let logo: StoredPicture | null = null
  for (const [at, each] of found.entries()) {
    const unpacked = await unpackPicture(each)
    if (typeof unpacked !== 'string') kept.push(unpacked.kept)
    if (at > 0) continue
    if (typeof unpacked !== 'string') logo = unpacked.picture
    else problems.push(problem('logo-unusable', '', { text: `on the sheet ${sheet}`, why: unpacked }))
  }
  if (found.length > 1) problems.push(problem('logo-several', '', { sheet, count: found.length }))
  return { logo, kept, problems }
}

/**
 * The logo of a job: that of a --details file, else the picture on its Job details sheet, else the file that is named there,
 * which lies beside the workbook or in a folder of it. `inventory` is the path of the file that is planned.
 */
export async function findLogo(
  { block }: Job,
  { details, pictures }: PlannedFile,
  inventory: string | null,
  given: { readonly path: string; readonly said: string } | null
): Promise<Logo> {
  if (given !== null) return fromFile(readPicture(given.path, given.said), given.said, '')
  const own = details.some((each) => each.block.sheet === block.sheet)
  const found = own ? pictures.filter(({ sheet }) => sheet === block.sheet) : []
  if (found.length > 0) return fromSheet(block.sheet, found)
  const { logoFile, cells } = readDetails(block)
  if (logoFile === '' || inventory === null) return { logo: null, kept: [], problems: [] }
  return fromFile(readPictureIn(dirname(inventory), logoFile), logoFile, cells.get('logo') ?? '')
}
