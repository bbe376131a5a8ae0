/** The shares of foliage that a plan prints, as a person reads them: terminal, JSON sentences, sheets, pictures. */
import type { Printed } from './plannedFile'
import type { WrittenFile, WrittenSheet } from './writtenFile'

/** What one surface prints of a visit to a tree; a text that it does not print is null. */
export interface PrintedVisitShares {
  readonly where: string
  readonly tree: string
  readonly visit: number
  readonly dose: string | null
  readonly ceiling: string | null
  /** Limb and dose, where the surface lists the cuts. */
  readonly cuts: readonly (readonly [limb: string, dose: string])[] | null
}

const share = '(\\d+(?:[.,]\\d+)? ?%)'

/** The blocks of the terminal's trees: a name at the margin, then lines that start with the leader. */
export function inTerminal(text: string): {
  shares: PrintedVisitShares[]
  ceilings: [tree: string, ceiling: string][]
} {
  const shares: PrintedVisitShares[] = []
  const ceilings: [string, string][] = []
  for (const block of text.split(/\n\n/)) {
    const tree = /^(\S+)(?: [^\n]*)?\n(?:\S[^\n]*\n)?(?= {2}Leader )/.exec(block)?.[1]
    if (tree === undefined) continue
    const head = /Leader [\s\S]*?allowed ([\s\S]*?)\.\n/.exec(block)?.[1]
    // A basis that ends with what was taken already names no ceiling at its end.
    const last = [...(/already/.test(head ?? '') ? '' : (head ?? '')).matchAll(new RegExp(share, 'g'))].at(
      -1
    )?.[1]
    if (last !== undefined) ceilings.push([tree, last])
    const visits = block.split(/(?=^ {2}Visit \d+, \d{4})/m).slice(1)
    for (const lines of visits) {
      if (/^ {2}Visit \d+, \d{4}: no cut\./.test(lines)) continue
      const [, visit, dose, ceiling] = new RegExp(
        `Visit (\\d+), \\d{4}: ${share} of the foliage, ${share} allowed`
      ).exec(lines) ?? ['', '', null, null]
      const rows = lines.matchAll(new RegExp(`^ {4}(\\S+) +(?:reduce|remove|raise)\\b.*? ${share}`, 'gm'))
      const cuts = [...rows].map((row) => [row[1]!, row[2]!] as const)
      shares.push({
        where: 'terminal',
        tree,
        visit: Number(visit),
        dose: dose ?? null,
        ceiling: ceiling ?? null,
        cuts
      })
    }
  }
  return { shares, ceilings }
}

const rowsOf = (sheet: WrittenSheet) => {
  const rows = new Map<number, Map<string, string>>()
  for (const { row, column, shown } of sheet.cells) {
    if (!rows.has(row)) rows.set(row, new Map())
    rows.get(row)!.set(column, shown)
  }
  return [...rows.entries()].sort(([a], [b]) => a - b)
}

/** The column of each header wanted, or nothing where the row is not that table's headers. */
function headersIn(row: ReadonlyMap<string, string>, wanted: Readonly<Record<string, RegExp>>) {
  const found = Object.entries(wanted).map(([name, header]) => [
    name,
    [...row].find(([, text]) => header.test(text))?.[0] ?? null
  ])
  return found.some(([, column]) => column === null)
    ? null
    : (Object.fromEntries(found) as Readonly<Record<string, string>>)
}

const cutPlanHeaders = {
  tree: /^Tree$/,
  visit: /^Visit$/,
  limb: /^Limb$/,
  cut: /^foliage removed$/i,
  dose: /foliage removed at the visit/i,
  ceiling: /allowed removal/i
}

export function inCutPlan(sheet: WrittenSheet): PrintedVisitShares[] {
  const visits = new Map<string, { -readonly [K in keyof PrintedVisitShares]: PrintedVisitShares[K] }>()
  let at: Readonly<Record<string, string>> | null = null
  for (const [, row] of rowsOf(sheet)) {
    const headers = headersIn(row, cutPlanHeaders)
    if (headers !== null) {
      at = headers
      continue
    }
    const cell = (name: keyof typeof cutPlanHeaders) => row.get(at?.[name] ?? '')
    const [tree, visit, limb, cut, dose, ceiling] = [
      cell('tree'),
      cell('visit'),
      cell('limb'),
      cell('cut'),
      cell('dose'),
      cell('ceiling')
    ]
    if (at === null || !/^\d+$/.test(visit ?? '') || tree === undefined || limb === undefined) continue
    const key = `${tree}/${visit!}`
    const known = visits.get(key)
    const cuts = [...(known?.cuts ?? []), [limb, cut ?? ''] as const]
    const same = known === undefined || (known.dose === (dose ?? null) && known.ceiling === (ceiling ?? null))
    if (!same) throw new Error(`The rows of ${key} differ in the dose of the visit or in the allowed removal`)
    visits.set(key, {
      where: 'Cut plan',
      tree,
      visit: Number(visit),
      dose: dose ?? null,
      ceiling: ceiling ?? null,
      cuts
    })
  }
  return [...visits.values()]
}

/** A card a tree, whose first row is keyed by it beside what is printed, with the ceiling and the dose in a sentence. */
export function inWorkOrder(sheet: WrittenSheet): PrintedVisitShares[] {
  const found: { -readonly [K in keyof PrintedVisitShares]: PrintedVisitShares[K] }[] = []
  let keys: Readonly<Record<string, string>> | null = null
  let card = ''
  for (const [, row] of rowsOf(sheet)) {
    keys ??= headersIn(row, { tree: /^Tick of tree$/, limb: /^Of limb$/, visit: /^At visit$/ })
    if (keys === null) continue
    const tree = row.get(keys.tree!)
    const visit = row.get(keys.visit!)
    if (tree !== undefined && /^\d+$/.test(visit ?? '') && !row.has(keys.limb!)) {
      found.push({ where: 'Work order', tree, visit: Number(visit), dose: null, ceiling: null, cuts: null })
      card = ''
    }
    const current = found.at(-1)
    // A sentence may take two rows.
    card += ` ${[...row.values()].join(' ')}`
    const total = new RegExp(`At most .*?${share}.*?the cuts take ${share}`).exec(card)
    if (current !== undefined && total !== null) [current.ceiling, current.dose] = [total[1]!, total[2]!]
  }
  return found.filter(({ ceiling }) => ceiling !== null)
}

/** One block a tree, whose first row names it, with the ceiling and the dose of the first visit in a sentence. */
export function inSpecification(sheet: WrittenSheet): PrintedVisitShares[] {
  const found: PrintedVisitShares[] = []
  let tree = ''
  for (const [, row] of rowsOf(sheet)) {
    const text = [...row.values()].join(' ')
    tree = /^Tree (\S+):/.exec(row.get('A') ?? '')?.[1] ?? tree
    const amount = new RegExp(
      `ot more than ${share} of the live foliage of the tree \\((.*?)\\)(?:.*?take about ${share})?`
    ).exec(text)
    if (amount === null || tree === '') continue
    const told = /already/.test(amount[2]!) ? '' : amount[2]!
    const basis = [...told.matchAll(new RegExp(share, 'g'))].at(-1)?.[1] ?? null
    found.push({
      where: 'Specification',
      tree,
      visit: 1,
      dose: amount[3] ?? null,
      ceiling: amount[1]!,
      cuts: null
    })
    found.push({
      where: 'Specification, in brackets',
      tree,
      visit: 1,
      dose: null,
      ceiling: basis,
      cuts: null
    })
  }
  return found
}

export function inClientReport(sheet: WrittenSheet): PrintedVisitShares[] {
  // Running text goes on in the next rows, below the heading of its tree.
  const text = rowsOf(sheet)
    .map(([, row]) => [...row.values()].join(' '))
    .join(' ')
  return text.split(/(?=\bTree \S+: )/).flatMap((part) => {
    const tree = /^Tree (\S+): /.exec(part)?.[1]
    const ceiling = new RegExp(`No more than ${share} of the living`).exec(part)?.[1]
    return ceiling === undefined || tree === undefined
      ? []
      : [{ where: 'Client report', tree, visit: 1, dose: null, ceiling, cuts: null }]
  })
}

/** What charts and drawings say in their alternative texts. */
export function inAltTexts(file: WrittenFile): PrintedVisitShares[] {
  const found: PrintedVisitShares[] = []
  for (const text of file.sheets.flatMap(({ altTexts }) => altTexts)) {
    for (const [, tree, dose, ceiling] of text.matchAll(new RegExp(`tree (\\S+), ${share} of ${share}`, 'g')))
      found.push({
        where: 'alt text of a chart',
        tree: tree!,
        visit: 1,
        dose: dose!,
        ceiling: ceiling!,
        cuts: null
      })
    for (const part of text.split(/(?=Tree \S+, (?:before|after) visit)/)) {
      const of = /^Tree (\S+), (?:before|after) visit (\d+)/.exec(part)
      const amount = new RegExp(`Foliage removed: ${share} of ${share} allowed`).exec(part)
      if (of === null || amount === null) continue
      const [tree, visit] = [of[1]!, Number(of[2])]
      found.push({
        where: 'alt text of a drawing',
        tree,
        visit,
        dose: amount[1]!,
        ceiling: amount[2]!,
        cuts: null
      })
    }
  }
  return found
}

/** The dose of each cut as its reason says it, in the JSON and so everywhere a reason is printed. */
export function inReasons({ trees }: Printed): PrintedVisitShares[] {
  return trees.flatMap(({ tree, visits }) =>
    visits.map(({ visit, cuts }) => {
      const said = cuts.flatMap(({ limb, reason }) => {
        const dose = new RegExp(`${share} of the tree’s`).exec(reason)?.[1]
        return dose === undefined ? [] : [[limb, dose] as const]
      })
      return { where: 'reason', tree, visit, dose: null, ceiling: null, cuts: said }
    })
  )
}
