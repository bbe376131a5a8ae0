/** The script that the spreadsheet loads: ties every cell function to its id, at once and without a page. */
import { cellFunctions } from './all'

// Without office.js there is nothing to tie them to; the page says what is missing.
if (typeof CustomFunctions !== 'undefined')
  for (const [id, cellFunction] of Object.entries(cellFunctions)) CustomFunctions.associate(id, cellFunction)
