import { readChoice, type ChoiceName } from '../../../shared/choices'

const pair = /(?<![\p{L}\d])(\d{1,2}|\p{L})\s*[=:–-]\s*(\p{L}(?:[\p{L} -]*\p{L})?)/gu

/** The words of a choice by the numbers or letters that a header gives them; none where one of its words is no choice. */
export function legendIn(header: string, name: ChoiceName): ReadonlyMap<string, string> {
  const read = [...header.matchAll(pair)].map(
    ([, code = '', word = '']) => [code, readChoice(name, word)] as const
  )
  const found = read.flatMap(([code, value]) => (value === null ? [] : [[code, value] as const]))
  return new Map(found.length === read.length && found.length > 1 ? found : [])
}
