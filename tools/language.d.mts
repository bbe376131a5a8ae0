import type { Rule } from 'eslint'

/** A word that is not used here: where it begins in its text, and what to write instead. */
interface UnusedWord {
  readonly word: string
  readonly at: number
  readonly write: string
}

export const exemptions: readonly { readonly path: string; readonly words: RegExp; readonly why: string }[]
export function unusedWords(path: string, text: string): UnusedWord[]
export const usEnglish: Rule.RuleModule
