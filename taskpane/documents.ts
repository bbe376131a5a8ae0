/**
 * What the pane needs once it stands: the reader, which finds the inventory, the plan, the price, the documents, their writing
 * and the drawings. Built as a script of its own, so that the pane does not wait for it.
 */
export { applySheets } from '../src/excel/applySheets'
export { readPictures } from '../src/excel/readPictures'
export { writeDetailsSheet, writeUsersSheet } from '../src/excel/usersSheet'
export { planTrees } from '../src/plan/planInventory'
export { planByRules } from '../src/plan/rules/planByRules'
export { detailsOfDay } from '../src/details/settleDetails'
export { confidenceOf } from '../src/plan/outlook'
export { weighedFor } from '../src/plan/weighed/weighTree'
export { priceByRates } from '../src/price/priceByRates'
export { readSheets } from '../src/inventory/readSheets'
export { showsInventory } from '../src/inventory/survey/showsInventory'
export { describeDocuments, describeUsersSheet } from '../src/sheets/describeDocuments'
export { treeSpecificationText } from '../src/sheets/specification/specification'
export { canvasPainter } from '../src/drawing/paint/canvasPainter'
export { doseChart } from '../src/drawing/charts/doseChart'
export { drawTree, fittingHeight } from '../src/drawing/drawTree'
export { priceChart } from '../src/sheets/estimate/priceChart'
export { ratioChart } from '../src/drawing/charts/ratioChart'
export { toSvgElement } from '../src/drawing/paint/toSvgElement'
