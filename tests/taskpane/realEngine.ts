import { readSheets } from '../../src/inventory/readSheets'
import { planByRules } from '../../src/plan/rules/planByRules'
import { planTrees } from '../../src/plan/planInventory'
import { detailsOfDay } from '../../src/details/settleDetails'
import { priceByRates } from '../../src/price/priceByRates'
import { describeDocuments, describeUsersSheet } from '../../src/sheets/describeDocuments'
import * as documents from '../../taskpane/documents'
import type { Engine } from '../../taskpane/engine'

/** The engine as the pane has it, but fetched at once. */
export const realEngine: Engine = {
  readSheets,
  planByRules,
  planTrees,
  weighing: () => documents,
  detailsOfDay,
  priceByRates,
  describeUsersSheet,
  describeDocuments,
  specificationOf: documents.treeSpecificationText,
  drawings: () => Promise.resolve(documents)
}
