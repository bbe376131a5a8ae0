/** Inventories that are not yet read, or not yet told of, as a careful person would, and what is wanting. */
export const notYet: Readonly<Record<string, string>> = {
  accountingReport:
    'heights in mm with commas before the thousands: which sign parts them is not told from the sizes',
  codedNames: 'names of columns that a sheet of their own explains',
  commasNotQuoted: 'decimal commas without quotes: the rows are refused, and the trees with them',
  doubtsInManyWritings: 'a question mark or an e behind a number',
  drawnBoxes: 'the answers of one question as columns of their own',
  firstColumnUnnamed: 'a column of ids without a header is asked about, but not counted among the columns',
  inchesUnderFeet: 'one tree of several in another unit',
  keyAbove: 'a key of the columns above the table, taken for a form',
  limbIdsBecameDates: 'ids of limbs that became days are not told',
  limbsAllScaffold: 'one word for every limb in the column of limbs',
  millimetersUnderCentimeters: 'limbs and stems in another unit than the trunk are asked about one by one',
  pagesWithTitles: 'the row of a note among page titles is named one row off',
  spanishTownHall: 'a key of the trees without a name of its own on the sheet of limbs',
  treeLinesWithSizes: 'the sizes of a tree in a line of words',
  unevenGroups: 'a measure that only some groups of columns have'
}
