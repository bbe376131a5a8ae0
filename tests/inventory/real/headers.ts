import { english } from './words/headersEnglish'
import { french } from './words/headersFrench'
import { german } from './words/headersGerman'
import { spanish } from './words/headersSpanish'
import type { Phrasing } from './words/phrasing'

/**
 * What people head the columns of a tree inventory with, in four languages: estimators, consultants, municipalities,
 * nurseries and students. The phrasings are ours, written from how the trade speaks (common practice, no source); none is
 * taken from a file or a form.
 */
export const headers: readonly Phrasing[] = [...english, ...german, ...french, ...spanish]

export type { Phrasing }
