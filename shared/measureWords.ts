/** What a length beside these words is: the width of a stem, or the way round it. */
export type Measure = 'diameter' | 'girth'

/** The words of the trade in English, German, French and Spanish (common practice, no source). */
const words: Readonly<Record<Measure, string>> = {
  diameter: 'diameter|diam|dia|dbh|bhd|durchmesser|diamètre|diametre|dhp|diámetro|diametro|dap',
  girth:
    'girth|circumference|circ|gbh|cbh|umfang|stammumfang|stu|circonférence|circonference|circonf|circunferencia|perímetro|perimetro'
}
const figure = '(?=[\\d.,½¼¾⅛⅜⅝⅞~≈<>])'

function inFront(measure: Measure): RegExp {
  return new RegExp(`^(?:${words[measure]})(?!\\p{L})\\.?\\s*[:=]?\\s*${figure}`, 'iu')
}

function behind(measure: Measure): RegExp {
  return new RegExp(`\\s*\\(?(?<!\\p{L})(?:${words[measure]})\\.?\\)?$`, 'iu')
}

/** A capital C or U stands for a circumference (Umfang); a small c is "about". */
const marks: readonly (readonly [Measure, RegExp])[] = [
  ['diameter', new RegExp(`^[øØ⌀∅]\\s*[:=]?\\s*${figure}`, 'u')],
  ['diameter', /\s*[øØ⌀∅]$/u],
  ['girth', new RegExp(`^[CU][\\s.:=]*${figure}`, 'u')],
  ['diameter', inFront('diameter')],
  ['diameter', behind('diameter')],
  ['girth', inFront('girth')],
  ['girth', behind('girth')]
]

/** A length without the words beside it that say what was measured: "Ø 12", "12 cm dia", "C 94 cm", "girth 94". */
export function withoutMeasure(text: string): { readonly text: string; readonly measure: Measure | null } {
  const trimmed = text.trim()
  for (const [measure, mark] of marks) {
    const rest = trimmed.replace(mark, '')
    if (rest !== trimmed && rest !== '') return { text: rest.trim(), measure }
  }
  return { text: trimmed, measure: null }
}
