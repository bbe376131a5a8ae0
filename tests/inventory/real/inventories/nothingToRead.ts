import { csv } from '../csvFile'
import { type RealInventory } from '../expected'

export const nothingToRead: RealInventory = {
  shape: 'a price list and nothing else: no inventory at all',
  file: csv(`
Task,Unit,Price
Prune small tree,each,45.00
Haul brush,yard,30.00
Stump grinding,inch,4.00`),
  expected: { units: 'in-ft', columns: { '': '' }, trees: [], exit: 3, told: [['', 'no trees']] }
}
