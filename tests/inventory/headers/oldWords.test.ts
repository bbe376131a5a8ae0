import { columns } from '../../../shared/columns'
import { headed } from './oneColumn'

describe('the words of the dictionary', () => {
  const words = columns.flatMap(({ field, words: each }) => each.map((word) => [word, field] as const))

  it.each(words)('“%s” still heads the field %s', (word, field) => {
    const meaning = headed(word, field)
    expect(meaning?.field).toBe(field)
    expect(['sure', 'likely']).toContain(meaning?.confidence)
  })
})
