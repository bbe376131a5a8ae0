/**
 * What the pane needs only once somebody opens a tree or writes a sheet: the documents and the drawings. Built as a
 * script of its own, so that the pane stands at once.
 */
export { describeDocuments } from '../src/documents/describeDocuments'
export { describeStartRates } from '../src/documents/ratesSheet'
export { treeSpecificationText } from '../src/documents/specification'
export { describeRules } from '../src/documents/rulesSheet'
export { canvasPainter } from '../src/documents/drawing/canvasPainter'
export { doseChart } from '../src/documents/drawing/doseChart'
export { drawTree, fittingHeight } from '../src/documents/drawing/drawTree'
export { priceChart } from '../src/documents/drawing/priceChart'
export { ratioChart } from '../src/documents/drawing/ratioChart'
export { toSvgElement } from '../src/documents/drawing/toSvgElement'
