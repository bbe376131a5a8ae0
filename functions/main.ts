/** The script that the spreadsheet loads: ties every cell function to its id, at once and without a page. */
import { cellFunctions } from './all'

for (const [id, cellFunction] of Object.entries(cellFunctions)) CustomFunctions.associate(id, cellFunction)
