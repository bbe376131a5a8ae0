/** Why a formula gives no value: a plain sentence. `missing` where something is absent rather than wrong. */
export interface Refusal {
  refusal: 'wrong' | 'missing'
  sentence: string
}

export function refuse(sentence: string, refusal: Refusal['refusal'] = 'wrong'): Refusal {
  return { refusal, sentence }
}

export function isRefusal(value: unknown): value is Refusal {
  return typeof value === 'object' && value !== null && 'refusal' in value
}
