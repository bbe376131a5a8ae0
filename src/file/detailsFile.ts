/** The details of a job from a file of JSON, whose keys are those of the details book. */
import { readFile } from 'node:fs/promises'
import { detailEntry, detailNames, detailsBook, type DetailName } from '../details/detailsBook'
import { readDetail, wantedOf } from '../details/readDetail'
import { isBlank, quoted, type Cell } from '../../shared/cells'
import { refuse, type Refusal } from '../../shared/refusal'
import { listed } from '../../shared/words/lists'

/** Values by the details that they are of, as they were typed. */
export type GivenDetails = ReadonlyMap<DetailName, Cell>

const isName = (key: string): key is DetailName => Object.hasOwn(detailsBook, key)
const isCell = (value: unknown): value is Cell =>
  value === null || ['string', 'number', 'boolean'].includes(typeof value)

/** What a --details file takes: one line per key. */
export const aboutDetails = detailNames
  .map((name) => `    ${name.padEnd(17)} ${detailEntry(name).name}: ${detailEntry(name).remark}`)
  .join('\n')

function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    return refuse((error as Error).message.split('\n')[0] ?? '')
  }
}

/** The details that a text of JSON gives, or the first thing that is wrong with it. `file` names it in a sentence. */
export function parseDetails(file: string, text: string): GivenDetails | Refusal {
  const json = parsed(text)
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    return refuse(`--details ${file} holds no object: write { "company": "…", "client": "…" }.`)
  if ('refusal' in json && 'sentence' in json)
    return refuse(
      `--details ${file} is no JSON (${String(json.sentence)}): write { "company": "…", "client": "…" }.`
    )
  const given = new Map<DetailName, Cell>()
  for (const [key, value] of Object.entries(json)) {
    if (!isName(key))
      return refuse(`--details ${file} has the unknown key “${quoted(key)}”: use ${listed(detailNames)}.`)
    const wanted = wantedOf(detailEntry(key).kind)
    if (!isCell(value)) return refuse(`--details ${file} gives “${key}” no single value: write ${wanted}.`)
    if (isBlank(value)) continue
    if (readDetail(key, value) === null)
      return refuse(`--details ${file} gives “${key}” as “${quoted(value)}”, which is not ${wanted}.`)
    given.set(key, value)
  }
  return given
}

/** The details in a file, or why it cannot be used. */
export async function readDetailsFile(path: string, name: string): Promise<GivenDetails | Refusal> {
  try {
    return parseDetails(name, await readFile(path, 'utf8'))
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    if (code === 'ENOENT')
      return refuse(`--details ${name} is not there: check its name and folder.`, 'missing')
    return refuse(`--details ${name} could not be read (${code ?? String(error)}).`)
  }
}
