/**
 * The language and region in which everything is written: sentences, figures, lists, plurals and dates. One place, so
 * that another language has one place to begin.
 */
export const locale = 'en-US'

/**
 * Lists are written "A, B and C". The data of en-US (CLDR) puts a comma before "and" as well; that of international
 * English does not, and the documents never have.
 */
export const listLocale = 'en-001'
