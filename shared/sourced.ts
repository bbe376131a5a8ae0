/**
 * How sure a number is.
 * read: read in the cited document. second-hand: quoted by another. data: derived from named open data.
 * memory: recalled from the named publication. practice: common practice, no source. house: a choice of this project.
 */
export type Certainty = 'read' | 'second-hand' | 'data' | 'memory' | 'practice' | 'house'

/** A number of the trade with where it comes from. */
export interface Sourced {
  value: number
  unit: string
  source: string
  certainty: Certainty
}
