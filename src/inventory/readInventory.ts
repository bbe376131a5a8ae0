import { addressIn, cellAddress, isBlank, type CellBlock } from '../../shared/cells'
import { columns, type Field } from '../../shared/columns'
import { problem, type Problem } from '../../shared/problems'
import { CellReader } from './cellReader'
import { leaveUnplanned, type Inventory, type OpenInventory, type ReadingChoices } from './inventory'
import { matchColumns } from './matchColumns'
import { Plausibility } from './plausible/plausible'
import { isUnread, type Reading } from './reading'
import { LimbReader, type SaidOfColumns } from './readLimb'
import { TreeReader, type OpenTree } from './readTree'

/**
 * Reads a block of cells as an inventory: headers first, then one row per limb or one row per tree. Nothing is dropped:
 * what cannot be used stands in `problems` with its address, and rows without a plan in `unplanned`.
 */
export function readInventory(block: CellBlock, choices: ReadingChoices = {}): Inventory {
  const inventory = readHeaders(block, choices)
  const stop = whyUnusable(block, inventory)
  if (stop !== null) return { ...inventory, problems: [stop] }
  const manner = mannerOf(block, inventory)
  readRows(block, inventory, 1, block.rows.length, manner)
  manner.plausibility.look(inventory.trees)
  closeReading(inventory, manner)
  return inventory
}

/**
 * Reads a block in parts of about that many rows, never parting a tree, for sheets too large to hold as one inventory.
 * Problems of the headers come with the first part. Where a tree's rows do not stand together, the block is read
 * in one part.
 */
export function* readInParts(
  block: CellBlock,
  rowsAPart: number,
  choices: ReadingChoices = {}
): Generator<Inventory, void> {
  const headers = readHeaders(block, choices)
  const stop = whyUnusable(block, headers)
  const manner = mannerOf(block, headers)
  const starts = stop === null ? partStarts(block, headers, rowsAPart) : []
  if (stop !== null || starts.length < 2) {
    yield readInventory(block, choices)
    return
  }
  for (let part = 0; part < starts.length; part++) {
    const problems = part === 0 ? headers.problems : []
    const inventory = { ...headers, trees: [], limbCount: 0, unplanned: [], problems }
    readRows(block, inventory, starts[part] ?? 1, starts[part + 1] ?? block.rows.length, manner)
    manner.plausibility.look(inventory.trees)
    if (part + 1 === starts.length) closeReading(inventory, manner)
    yield inventory
  }
}

function readHeaders(block: CellBlock, choices: ReadingChoices): OpenInventory {
  const problems: Problem[] = []
  const { matches, system } = matchColumns(block, choices, problems)
  return {
    sheet: block.sheet,
    address: blockAddress(block),
    top: block.top,
    left: block.left,
    matches,
    system,
    trees: [],
    limbCount: 0,
    unplanned: [],
    problems
  }
}

function idOf(block: CellBlock, column: number, row: number): string {
  const cell = block.rows[row]?.[column]
  return typeof cell === 'string' ? cell.trim() : cell === null || cell === undefined ? '' : String(cell)
}

function idColumn(inventory: Inventory): number {
  return inventory.matches.find((match) => match.field === 'tree')?.column ?? 0
}

/** Where no id is repeated and some are blank, an id stands for the rows below it. */
function idsStandOnce(block: CellBlock, inventory: Inventory): boolean {
  const column = idColumn(inventory)
  const seen = new Set<string>()
  let blanks = 0
  for (let row = 1; row < block.rows.length; row++) {
    const id = idOf(block, column, row)
    if (id === '') blanks++
    else if (seen.has(id)) return false
    else seen.add(id)
  }
  return blanks > seen.size
}

/** The rows at which parts begin, each with a new tree; none where some tree's rows do not stand together. */
function partStarts(block: CellBlock, inventory: Inventory, rowsAPart: number): number[] {
  const column = idColumn(inventory)
  const seen = new Set<string>()
  const starts = [1]
  let last = ''
  for (let row = 1; row < block.rows.length; row++) {
    const id = idOf(block, column, row)
    if (id === '' || id === last) continue
    if (seen.has(id)) return []
    seen.add(id)
    last = id
    if (row - (starts.at(-1) ?? 1) >= rowsAPart) starts.push(row)
  }
  return starts
}

function blockAddress(block: CellBlock): string {
  const first = addressIn(block, 0, 0)
  const height = block.rows.length
  const width = block.rows[0]?.length ?? 0
  return height * width <= 1
    ? first
    : `${first}:${cellAddress(block.top + height - 1, block.left + width - 1)}`
}

function whyUnusable(block: CellBlock, inventory: Inventory): Problem | null {
  const corner = addressIn(block, 0, 0)
  if (block.rows.every((row) => row.every(isBlank))) return problem('empty-selection', '')
  const known = inventory.matches.filter((match) => match.field !== null).map((match) => match.field)
  if (
    known.length < 2 ||
    !known.some((field) => field === 'tree' || field === 'diameter' || field === 'trunk')
  )
    return problem('no-headers', corner)
  if (!known.includes('tree'))
    return problem('missing-column', corner, { column: 'the tree', example: 'Tree' })
  if (block.rows.slice(1).every((row) => row.every(isBlank))) return problem('headers-only', corner)
  return null
}

/** What holds for all parts of a block. */
interface Manner {
  /** An id stands for the rows below it that have none. */
  readonly inheritsId: boolean
  readonly said: SaidOfColumns
  readonly readers: ReadonlyMap<Field, CellReader>
  readonly plausibility: Plausibility
}

function mannerOf(block: CellBlock, inventory: Inventory): Manner {
  const readers = new Map<Field, CellReader>()
  for (const match of inventory.matches)
    if (match.field !== null) readers.set(match.field, new CellReader(block, match, match.field))
  return {
    inheritsId: idsStandOnce(block, inventory),
    said: new Map(),
    readers,
    plausibility: new Plausibility(inventory)
  }
}

function readRows(
  block: CellBlock,
  inventory: OpenInventory,
  from: number,
  to: number,
  manner: Manner
): void {
  const rows = new RowSorter(block, inventory, manner)
  for (let row = from; row < to; row++) rows.add(row)
}

/** What is reported of whole columns, once all rows are read. */
function closeReading(inventory: OpenInventory, { readers, plausibility }: Manner): void {
  for (const reader of readers.values()) inventory.problems.push(...reader.remarks())
  inventory.problems.push(...plausibility.problems())
}

const limbFields = columns.filter((column) => column.of === 'limb' && column.field !== 'notes')

/** Puts each row with its tree. */
class RowSorter {
  private readonly trees = new Map<string, { tree: OpenTree; ids: Map<string, number> }>()
  private readonly treeReader: TreeReader
  private readonly limbReader: LimbReader
  private readonly idReader: CellReader
  private readonly limbIds: CellReader | undefined
  private readonly limbColumns: number[]
  private last = ''

  constructor(
    private readonly block: CellBlock,
    private readonly inventory: OpenInventory,
    private readonly manner: Manner
  ) {
    const { readers } = manner
    const id = readers.get('tree')
    if (id === undefined) throw new Error('The inventory has no tree column')
    this.idReader = id
    this.limbIds = readers.get('limb')
    this.treeReader = new TreeReader(readers, inventory)
    this.limbReader = new LimbReader(readers, inventory, manner.said)
    const isLimbField = new Set<Field>(limbFields.map(({ field }) => field))
    this.limbColumns = inventory.matches.flatMap(({ field, column }) =>
      field !== null && isLimbField.has(field) ? [column] : []
    )
  }

  private isLimbRow(row: number): boolean {
    const cells = this.block.rows[row]
    return this.limbColumns.some((column) => !isBlank(cells?.[column]))
  }

  add(row: number): void {
    const cells = this.block.rows[row]
    if (cells === undefined || (isBlank(cells[0]) && cells.every(isBlank))) return
    const read = this.idReader.read(row) as Reading<string>
    if (isUnread(read)) {
      this.refuse(row, read)
      return
    }
    const id = typeof read === 'string' ? read : this.manner.inheritsId ? this.last : ''
    if (id === '') {
      const facts = { row: this.inventory.top + row + 1 }
      this.refuse(row, problem('limb-without-tree', this.idReader.address(row), facts))
      return
    }
    this.last = id
    let entry = this.trees.get(id)
    if (entry === undefined) {
      entry = { tree: this.treeReader.begin(id, row), ids: new Map() }
      this.trees.set(id, entry)
      this.inventory.trees.push(entry.tree)
    } else this.treeReader.continue(entry.tree, row)
    if (this.isLimbRow(row)) this.addLimb(entry, row)
  }

  private addLimb({ tree, ids }: { tree: OpenTree; ids: Map<string, number> }, row: number): void {
    const limb = this.limbReader.read(tree, row)
    const first = ids.get(limb.id)
    this.inventory.limbCount++
    if (first === undefined) {
      ids.set(limb.id, row)
      tree.limbs.push(limb)
      return
    }
    const addressOf = (at: number): string => this.limbIds?.address(at) ?? ''
    const facts = { limb: limb.id, tree: tree.id, other: addressOf(first) }
    const duplicate = problem('duplicate-limb', addressOf(row), facts)
    this.inventory.problems.push(duplicate)
    leaveUnplanned(this.inventory, tree.id, row, duplicate.message)
  }

  /** A row that belongs to no tree is not planned. */
  private refuse(row: number, why: Problem): void {
    this.inventory.problems.push(why)
    leaveUnplanned(this.inventory, '', row, why.message)
  }
}
