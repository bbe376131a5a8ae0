/**
 * What stands wherever people act on a plan: on the pane, the cut plan, the work order and the report. The first
 * sentence says what the output is not; the rest say who and what governs the work.
 */
export const cautions = [
  'This plan is not a tree risk assessment and promises no safety.',
  'A qualified arborist on site decides every cut.',
  'Local law and the rules on utilities, wildlife and quarantine govern. Ask for the nesting season and the disease restrictions of the region; none is assumed here.',
  'Power lines: stop and call the utility. Treat every wire as energised.',
  'Never work alone aloft.'
] as const

/** The cautions in two lines, for places where the whole list is one step away. */
export const cautionsInShort =
  'Not a tree risk assessment nor a promise of safety: a qualified arborist on site decides. Power lines: stop and call. Never work alone aloft.'
