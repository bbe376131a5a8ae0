/** Arguments as the client sends them, checked: a wrong one is refused with a sentence. */
import type { HostObject } from './hostObject'
import { invalidArgument } from './faults'

export function textArgument(args: unknown[], index: number, what: string): string {
  const value = args[index]
  if (typeof value !== 'string' || value === '') throw invalidArgument(`${what} is missing.`)
  return value
}

export function numberArgument(args: unknown[], index: number, what: string): number {
  const value = args[index]
  if (typeof value !== 'number' || !Number.isInteger(value))
    throw invalidArgument(`${what} is not a whole number.`)
  return value
}

export function isHostObject(value: unknown): value is HostObject {
  return typeof value === 'object' && value !== null && 'typeName' in value && 'scalars' in value
}

/** A property's new value: a text, a number or one of two words, as the member wants it. */
export function textValue(value: unknown, what: string): string {
  if (typeof value !== 'string') throw invalidArgument(`${what} is not a text.`)
  return value
}

export function numberValue(value: unknown, what: string, least = 0): number {
  if (typeof value !== 'number' || !Number.isFinite(value) || value < least)
    throw invalidArgument(`${what} is not a number of ${least} or more.`)
  return value
}

export function booleanValue(value: unknown, what: string): boolean {
  if (typeof value !== 'boolean') throw invalidArgument(`${what} is neither true nor false.`)
  return value
}

export function oneOf<Word extends string>(value: unknown, words: readonly Word[], what: string): Word {
  const word = words.find((known) => known === value)
  if (word === undefined) throw invalidArgument(`${what} is none of ${words.join(', ')}.`)
  return word
}
