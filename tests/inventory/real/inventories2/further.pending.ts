// Pending: what the reader does not do yet. Run by `npx jest --testMatch '**/further.pending.ts'`.
import { removeFolder } from '../commandOutput'
import { inventories2 } from '.'
import { checkInventory } from './checkInventory'
import { notYet } from './notYet'

afterAll(removeFolder)

describe.each(Object.entries(inventories2).filter(([name]) => name in notYet))('%s', (_name, inventory) => {
  checkInventory(inventory)
})
