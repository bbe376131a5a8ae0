import type { Cell } from '../../../shared/cells'
import { readChoice } from '../../../shared/choices'
import { columnOf, type Field } from '../../../shared/columns'
import { unitFromWord } from '../../../shared/units'
import { likelyFields } from '../headers/likelihood'

/** What a line of words says of a tree. */
export interface SaidInLine {
  readonly field: Field
  readonly label: string
  readonly value: Cell
}

/** How well words have to mean a field. House judgment. */
const likelyEnough = 0.6

const measured = /^(\D*?)\s*(\d+(?:[.,]\d+)?)\s*([\p{L}'"″′]+\.?)?(?:\s+(.*))?$/u

/** The field of a tree that words name, or null. */
function namedBy(words: string): Field | null {
  const found = likelyFields(words).find(({ field }) => columnOf(field).of === 'tree')
  return found !== undefined && found.score >= likelyEnough ? found.field : null
}

/** "30 ft tall", "crown from 6 ft": a number with its unit, and words that say what it is; "Linde 9 m hoch" begins with its kind. */
function sizeIn(piece: string): SaidInLine[] {
  const [, before = '', figure, unitWord = '', after = ''] = measured.exec(piece) ?? []
  if (figure === undefined) return []
  const unit = unitFromWord(unitWord.replace(/\.$/, ''))
  const said = (...parts: readonly string[]): SaidInLine[] => {
    const words = parts.join(' ').replace(/\s+/g, ' ').trim()
    const label = unit === null ? words : `${words} (${unitWord})`
    const field = words === '' ? null : namedBy(label)
    return field === null ? [] : [{ field, label, value: figure }]
  }
  const behind = unit === null ? `${unitWord} ${after}` : after
  const whole = said(before, behind)
  if (whole.length > 0 || before === '') return whole
  const alone = said(behind)
  return alone.length === 0 ? [] : [...alone, { field: 'species', label: 'Species', value: before }]
}

const choicesOfTrees = [
  ['stage', 'lifeStage'],
  ['vigor', 'vigor']
] as const

/** "young", "good vigor": a word of a choice, alone where it is one of a single choice, or beside the name of its field. */
function wordIn(piece: string): SaidInLine | null {
  const alone = choicesOfTrees.filter(([, choice]) => readChoice(choice, piece) !== null)
  const [only] = alone
  if (only !== undefined && alone.length === 1)
    return { field: only[0], label: columnOf(only[0]).name, value: piece }
  const words = piece.split(/\s+/)
  for (const at of [1, words.length - 1]) {
    const [head, tail] = [words.slice(0, at).join(' '), words.slice(at).join(' ')]
    for (const [name, value] of [
      [head, tail],
      [tail, head]
    ] as const) {
      const found = choicesOfTrees.find(
        ([field, choice]) => namedBy(name) === field && readChoice(choice, value) !== null
      )
      if (found !== undefined) return { field: found[0], label: name, value }
    }
  }
  return null
}

/** What stands behind the number of a tree in a line such as "Tree 12 - Red maple, 30 ft tall, crown from 6 ft, young". */
export function saidInLine(rest: string): SaidInLine[] {
  const found: SaidInLine[] = []
  const pieces = rest
    .replace(/^[\s\-–—,:(]+|[\s).]+$/g, '')
    .split(/\s*[,;()]\s+|\s+[-–—]\s+/)
    .filter((piece) => piece !== '')
  pieces.forEach((piece, at) => {
    const sizes = sizeIn(piece)
    const word = sizes.length > 0 ? null : wordIn(piece)
    const isKind = at === 0 && sizes.length === 0 && word === null && !/\d/.test(piece)
    const kind: SaidInLine = { field: 'species', label: 'Species', value: piece }
    for (const each of [...sizes, ...(word === null ? [] : [word]), ...(isKind ? [kind] : [])])
      if (!found.some(({ field }) => field === each.field)) found.push(each)
  })
  return found
}
