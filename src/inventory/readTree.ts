import { isBlank, quoted, type Cell } from '../../shared/cells'
import { columns, type Field } from '../../shared/columns'
import { problem } from '../../shared/problems'
import { optional, type CellReader } from './cellReader'
import type { Inventory, Tree } from './inventory'

const treeFields: Field[] = columns
  .filter((column) => column.of === 'tree' && column.field !== 'tree')
  .map((column) => column.field)

/** What a tree's rows said so far, as typed, so that repeated values are compared and not read again. */
interface Typed {
  cells: (Cell | undefined)[]
  rows: number[]
}

/** Reads a tree's own columns: from its first row, and from later rows what was blank before. */
export class TreeReader {
  private readonly fields: { field: Field; reader: CellReader }[]
  private readonly typed = new Map<Tree, Typed>()

  constructor(
    readers: Map<Field, CellReader>,
    private readonly inventory: Inventory
  ) {
    this.fields = treeFields.flatMap((field) => {
      const reader = readers.get(field)
      return reader === undefined ? [] : [{ field, reader }]
    })
  }

  begin(id: string, row: number): Tree {
    const tree = emptyTree(id, row)
    this.typed.set(tree, { cells: [], rows: [] })
    this.continue(tree, row)
    return tree
  }

  continue(tree: Tree, row: number): void {
    const typed = this.typed.get(tree)
    if (typed === undefined) return
    for (let at = 0; at < this.fields.length; at++) {
      const entry = this.fields[at]
      if (entry === undefined) continue
      const cell = entry.reader.raw(row)
      const known = typed.cells[at]
      if (cell === known || isBlank(cell)) continue
      if (known === undefined) {
        typed.cells[at] = cell
        typed.rows[at] = row
        this.take(tree, entry.field, entry.reader, row)
      } else if (String(cell).trim() !== String(known).trim())
        this.reportTwoValues(tree, entry, row, typed, at)
    }
  }

  private reportTwoValues(
    tree: Tree,
    entry: { field: Field; reader: CellReader },
    row: number,
    typed: Typed,
    at: number
  ): void {
    const first = typed.cells[at] ?? null
    const other = entry.reader.address(typed.rows[at] ?? 0)
    const facts = {
      tree: tree.id,
      column: entry.reader.name,
      first: quoted(first),
      other,
      text: entry.reader.text(row)
    }
    this.inventory.problems.push(problem('duplicate-tree', entry.reader.address(row), facts))
  }

  private take(tree: Tree, field: Field, reader: CellReader, row: number): void {
    const number = (read: () => number | null): number | null => optional(this.inventory.problems, read)
    switch (field) {
      case 'species':
        tree.species = reader.text(row)
        break
      case 'site':
        tree.site = reader.text(row)
        break
      case 'treeNotes':
        tree.notes = reader.text(row)
        break
      case 'clearanceSide':
        tree.clearanceSide = reader.text(row)
        break
      case 'height':
        tree.height = reader.positiveHeight(row)
        break
      case 'crownBase':
        tree.crownBase = reader.height(row)
        break
      case 'trunk':
        tree.trunk = number(() => reader.trunk(row))
        break
      case 'caliper':
        tree.caliper = number(() => reader.diameter(row))
        break
      case 'spread':
      case 'clearance':
      case 'caliperHeight':
      case 'matureHeight':
        tree[field] = number(() => reader.height(row))
        break
      case 'stage':
        tree.stage = reader.choice(row, 'lifeStage')
        break
      case 'vigor':
        tree.vigor = reader.choice(row, 'vigor')
        break
      case 'access':
        tree.access = reader.choice(row, 'access')
        break
      case 'growth': {
        const growth = reader.growth(row)
        tree.growth = growth.choice
        tree.growthRate = growth.rate
        break
      }
      case 'removed':
        tree.removed = strictest(reader.share(row), 1) ?? 0
        break
      case 'localLimit':
        tree.localLimit = strictest(reader.share(row), 0)
        break
      case 'dieback':
        tree.dieback = number(() => reader.share(row))
        break
      case 'lastPruned':
        tree.lastPruned = number(() => reader.year(row))
        break
      default:
        throw new Error(`No reading for the tree column ${field}`)
    }
  }
}

/** A limit that stands in the cell but cannot be read is taken at its strictest until it is mended. */
function strictest(share: number | null, instead: number): number | null {
  return share !== null && Number.isNaN(share) ? instead : share
}

function emptyTree(id: string, row: number): Tree {
  return {
    id,
    row,
    species: '',
    trunk: null,
    height: null,
    crownBase: null,
    spread: null,
    stage: null,
    vigor: null,
    growth: null,
    growthRate: null,
    removed: 0,
    localLimit: null,
    clearance: null,
    clearanceSide: '',
    dieback: null,
    caliper: null,
    caliperHeight: null,
    access: null,
    site: '',
    lastPruned: null,
    matureHeight: null,
    notes: '',
    limbs: []
  }
}
