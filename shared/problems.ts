/**
 * The closed catalog of what can be wrong with an inventory. Failure is a value: every rejected or doubtful
 * value becomes a Problem with the cell's address, a plain sentence and a remedy.
 *
 * stop: nothing can be planned. row: this row is not planned. doubt: planned, with the stated assumption.
 * note: worth knowing, nothing assumed.
 */
export type ProblemLevel = 'stop' | 'row' | 'doubt' | 'note'

interface Entry {
  level: ProblemLevel
  message: string
  remedy: string
}

/** Words in braces are facts: `problem` does not compile without them. {cell} is its address unless it is given. */
const catalog = {
  'empty-selection': {
    level: 'stop',
    message: 'No inventory was found.',
    remedy: 'An inventory has a header row and below it one row per limb or one row per tree.'
  },
  'headers-only': {
    level: 'stop',
    message: 'There are headers at {cell} and no rows below them.',
    remedy: 'Add a row for each limb, or select the rows together with the headers.'
  },
  'no-headers': {
    level: 'stop',
    message:
      'The first row at {cell} was not recognized as headers: no tree, limb or diameter column was found.',
    remedy:
      'Give the first row headers such as Tree, Limb, Limb dia (in), Stem dia (in), Origin (ft), Tip (ft).'
  },
  'no-trees-here': {
    level: 'stop',
    message: 'This is no inventory of trees: what stands at {cell} is {list}.',
    remedy:
      'Choose the sheet or the file with the trees; if these are trees, head the column of their ids “Tree”.'
  },
  'no-measures': {
    level: 'stop',
    message: 'The words at {cell} may head measurements of trees, but hardly a number stands below them.',
    remedy:
      'Name the file or the sheet that holds the inventory, or type the measured numbers below the headers.'
  },
  'missing-column': {
    level: 'stop',
    message: 'No column for {column} was found among the headers at {cell}.',
    remedy: 'Add a column headed {example}.'
  },
  'several-areas': {
    level: 'stop',
    message: 'The selection has {count} separate areas.',
    remedy: 'Select one block: the headers and the rows below them.'
  },
  'species-joined': {
    level: 'note',
    message:
      'The columns {text} name the species of each tree together, and are read as one name (at {cell}).',
    remedy: 'Nothing to do if they belong together.'
  },
  'column-twice': {
    level: 'doubt',
    message: 'The header at {cell} means {column}, which another column already gives; that one is used.',
    remedy: 'Rename or remove one of the two columns.'
  },
  'column-unknown': {
    level: 'note',
    message: 'The column “{text}” at {cell} is not one the plan uses; it is left as it is.',
    remedy: 'Nothing to do, or rename the header if it should be used.'
  },
  'measures-doubled': {
    level: 'note',
    message: 'Columns that give again in another unit what other columns give are not used: {text}.',
    remedy: 'Nothing to do, or choose the meaning of a column that should be used instead.'
  },
  'girths-doubled': {
    level: 'note',
    message: 'Girths of which other columns give the diameter are not used: {text}.',
    remedy: 'Nothing to do, or choose the meaning of a column that should be used instead.'
  },
  'years-doubled': {
    level: 'doubt',
    message:
      'The same measures stand side by side for several years: is the plan to be made from the latest, {used}? They are used, and not {text}.',
    remedy: 'If that is right, do nothing; otherwise choose the meaning of the columns to use.'
  },
  'inches-apart': {
    level: 'doubt',
    message:
      'Are these the inches left over from the feet in another column: {text}? They were not read, so that heights are up to a foot too low.',
    remedy: 'Type feet and inches in one cell, such as 6\'6".'
  },
  'column-of-two': {
    level: 'row',
    message:
      'The column “{text}” at {cell} holds two numbers in a cell ({values}) and was not read: are they {columns}?',
    remedy: 'Split it into two columns, each with a header and one number in a cell.'
  },
  'column-likely': {
    level: 'doubt',
    message: 'Is the column “{text}” at {cell} “{column}”, or rather “{other}”? It is used as “{column}”.',
    remedy: 'If that is right, do nothing; otherwise choose its meaning, or rename the header.'
  },
  'columns-unknown': {
    level: 'note',
    message: '{count} columns are not ones the plan uses and are left as they are: {text}.',
    remedy: 'Nothing to do, or choose the meaning of a column that should be used.'
  },
  'block-beside': {
    level: 'note',
    message: 'A block of cells beside the table was left out: {columns} ({cell}).',
    remedy: 'Nothing to do, or choose the meaning of a column that should be used.'
  },
  'column-asked': {
    level: 'row',
    message: 'No column was found for {column}, and limbs cannot be planned without it. Is it {choices}?',
    remedy: 'Choose “{name}” for the column that holds it, or head the column so.'
  },
  'sheets-left-out': {
    level: 'note',
    message: 'The inventory was read from {from}; nothing was read from the sheets {sheets}.',
    remedy: 'Nothing to do, or name the sheet to read if another one holds the inventory.'
  },
  'hidden-sheets-left-out': {
    level: 'note',
    message: 'Nothing was read from the hidden sheets {sheets}.',
    remedy: 'Nothing to do, or show the sheet if it belongs to the inventory.'
  },
  'tables-joined': {
    level: 'note',
    message: 'The trees of {trees} and the limbs of {limbs} were joined by the id of the tree.',
    remedy: 'Nothing to do if they belong together; otherwise name the sheet to read.'
  },
  'tables-stacked': {
    level: 'note',
    message: 'The inventory was put together from {places}.',
    remedy: 'Nothing to do if they belong together; otherwise name the sheet to read.'
  },
  'forms-read': {
    level: 'note',
    message: '{count} forms were read together, each as a tree with the limbs of the table below it.',
    remedy: 'Nothing to do if each of them is a tree.'
  },
  'table-turned': {
    level: 'note',
    message: 'The table at {cell} stands on its side: each of its columns was read as a row.',
    remedy: 'Nothing to do if each column is a tree or a limb.'
  },
  'form-alone': {
    level: 'note',
    message: 'There is no table, but labels with their values at {cell}: they were read as a form.',
    remedy: 'Nothing to do if they tell of trees and limbs.'
  },
  'one-measurement-a-row': {
    level: 'note',
    message:
      'Each row at {cell} gives one measurement and what was measured: those of a limb were put together.',
    remedy: 'Nothing to do if they belong together.'
  },
  'record-kinds': {
    level: 'note',
    message:
      'Rows of trees and rows of limbs stand under the same headers at {cell}; they were told apart by the column that says so.',
    remedy: 'Nothing to do if each limb stands below its tree, or names it.'
  },
  'column-parted': {
    level: 'note',
    message:
      'The column “{text}” at {cell} holds two numbers in each cell; they were read in the order of its header.',
    remedy: 'Nothing to do if that is right; otherwise split it into two columns.'
  },
  'measures-parted': {
    level: 'note',
    message:
      'The column “{text}” at {cell} holds several measures in each cell; they were read in its order as {parts}.',
    remedy: 'Nothing to do if that is right; otherwise split it into columns.'
  },
  'sizes-in-texts': {
    level: 'doubt',
    message:
      'Under “{text}” at {cell} the sizes of trees are read from texts such as “{example}”; what else these say is not read.',
    remedy: 'Check the sizes, and put what is measured into columns of its own.'
  },
  'text-marks': {
    level: 'note',
    message:
      'Every cell of {columns} bears a sign that says it is text, as “{text}” at {cell}; it is read without.',
    remedy: 'Nothing to do if the sign is no part of the values.'
  },
  'answers-ticked': {
    level: 'note',
    message:
      'The answers about “{text}” stand in columns of their own from {cell} on, of which one is ticked in each row; they were read as one column.',
    remedy: 'Nothing to do if each column is an answer.'
  },
  'ids-are-dates': {
    level: 'doubt',
    message:
      'The ids of {what} from {cell} on are dates, such as “{text}”: did the spreadsheet make them of entries such as 1-2? They are used as ids as they stand.',
    remedy: 'Set the format of the column to text and type the ids again, if they were others.'
  },
  'limb-ids-alike': {
    level: 'note',
    message:
      'The column “{text}” at {cell} says the same of several limbs of a tree and tells none from another; each row was read as a limb of its own.',
    remedy: 'Nothing to do, or give each limb of a tree an id of its own.'
  },
  'signs-by-size': {
    level: 'note',
    message:
      '{column} reads “{text}” at {cell}: the {sign} was taken {how}, as only then are the sizes those of trees.',
    remedy: 'Nothing to do if that is right.'
  },
  'group-lacks': {
    level: 'row',
    message: '{group} gives no {column}, which other columns give: it is missing for every limb there.',
    remedy: 'Add a column for it there.'
  },
  'tree-tall': {
    level: 'doubt',
    message:
      'Tree {tree} has a height of {height} at {cell}, far above the others: is it typed in another unit than {unit}? It is used as it stands.',
    remedy: 'Type the height in {unit}, like those of the other trees.'
  },
  'trunks-thinner': {
    level: 'doubt',
    message:
      'In {count} of {total} limbs the limb or the stem at its union is far thicker than the trunk of its tree ({cell}, read as {unit}; {place}, read as {otherUnit}): are limbs and trunks in different units? They are used as they stand.',
    remedy: 'Correct the units in the headers, or choose them.'
  },
  'columns-beyond': {
    level: 'doubt',
    message:
      'The sheet has {count} columns, of which the first {limit} were looked at; those from {cell} on were not.',
    remedy: 'Nothing to do if the inventory stands in the first ones; otherwise move its columns there.'
  },
  'headers-explained': {
    level: 'note',
    message: 'Headers were read by what {cell} says of them: {text}.',
    remedy: 'Nothing to do if that is right; otherwise choose the meaning of a column.'
  },
  'columns-in-groups': {
    level: 'note',
    message: 'The columns from {cell} to {last} repeat and were read as {count} limbs in each row.',
    remedy: 'Nothing to do if each group of columns is a limb.'
  },
  'trees-in-columns': {
    level: 'note',
    message: 'The columns from {cell} to {last} repeat and were read as {count} trees in each row.',
    remedy: 'Nothing to do if each group of columns is a tree.'
  },
  'headers-again': {
    level: 'note',
    message: 'The headers stand again, and were left out: {rows}.',
    remedy: 'Nothing to do.'
  },
  'totals-left-out': {
    level: 'note',
    message: 'Totals or averages were left out: {rows}.',
    remedy: 'Nothing to do if these are no trees or limbs.'
  },
  'notes-left-out': {
    level: 'note',
    message: 'Notes were left out: {rows}.',
    remedy: 'Nothing to do if these are no trees or limbs.'
  },
  'zones-from-lines': {
    level: 'note',
    message:
      'Zones of trees are read from the lines of text between the rows, such as “{zone}” at {cell}: {rows}.',
    remedy: 'Nothing to do if these are zones; otherwise add a column headed “Zone”.'
  },
  'zones-from-sheets': {
    level: 'note',
    message: 'Zones of trees are read from the names of the sheets, such as “{zone}” ({cell}).',
    remedy: 'Nothing to do if these are zones; otherwise add a column headed “Zone”.'
  },
  'sizes-from-lines': {
    level: 'note',
    message: 'Sizes of trees are read from the lines of text between the rows, such as “{text}” at {cell}.',
    remedy: 'Nothing to do if each line stands with the rows of its tree.'
  },
  'sizes-from-notes': {
    level: 'note',
    message: 'Sizes of trees are read from the notes, such as “{text}” at {cell}.',
    remedy: 'Nothing to do if these are sizes of the trees themselves.'
  },
  'sizes-in-lines': {
    level: 'doubt',
    message:
      'Sizes stand in lines of text between the rows ({count}, first “{text}” at {cell}), which do not tell their tree or say again what a column gives; they are not used.',
    remedy: 'Type the sizes into columns in the rows of their trees.'
  },
  'no-trees-left-out': {
    level: 'note',
    message: 'Vacant sites, stumps and removed trees were left out, as there is no tree to prune: {rows}.',
    remedy: 'Nothing to do if no tree stands there.'
  },
  'answers-unread': {
    level: 'doubt',
    message: '{answers} about columns that this workbook keeps cannot be read ({why}) and count for nothing.',
    remedy: 'Answer again what is asked; new answers take their place.'
  },
  'answers-not-kept': {
    level: 'note',
    message: 'The workbook does not keep the answers about columns: {text}',
    remedy: 'They hold until the pane is closed. Save the workbook where you may change it, then plan again.'
  },
  'said-no-trees': {
    level: 'note',
    message: 'Left out as no trees, as was answered before: {rows}.',
    remedy: 'Take the answer back if a tree stands there.'
  },
  'rows-hidden': {
    level: 'note',
    message: 'Hidden or filtered rows were read with the others: {rows}.',
    remedy: 'Nothing to do, or delete the rows that are not to be planned.'
  },
  'columns-hidden': {
    level: 'note',
    message: 'Hidden columns were read with the others: {columns}.',
    remedy: 'Nothing to do, or choose “not used” for a column that is not to be read.'
  },
  'ids-alike': {
    level: 'note',
    message: 'Ids that are written in different ways count as the same tree: {text} (first at {cell}).',
    remedy: 'Nothing to do if they are the same trees; otherwise give them ids that differ in more.'
  },
  'several-trees': {
    level: 'doubt',
    message:
      'The id at {cell} and others like it stand for several trees, told apart by {by}; they are planned as separate trees: {trees}.',
    remedy: 'Check these trees, and give each an id of its own.'
  },
  'earlier-surveys': {
    level: 'doubt',
    message:
      'Trees were surveyed more than once: of each the latest survey by {by} is planned, and {count} earlier rows were left out (first at {cell}). Is that right?',
    remedy: 'If it is, do nothing; otherwise give each tree an id of its own.'
  },
  'same-trees-again': {
    level: 'doubt',
    message:
      'The sheets {sheets} list the same trees as {from}. Is {from} the one that counts? It was read, and the others were left out.',
    remedy: 'If it is, do nothing; otherwise name the sheet to read.'
  },
  'limb-of-several': {
    level: 'row',
    message: 'The limb at {cell} names tree {tree}, an id that several trees bear.',
    remedy: 'Give each tree an id of its own, in both tables.'
  },
  'tree-not-listed': {
    level: 'doubt',
    message: 'The tree {tree} at {cell} is not listed among the trees of {trees}.',
    remedy: 'Add the tree to the list, or correct its id.'
  },
  'ids-below': {
    level: 'note',
    message: '{count} rows without an id belong to the tree named above them (first at {cell}).',
    remedy: 'Nothing to do if each limb stands below its tree.'
  },
  'id-from-sheet': {
    level: 'doubt',
    message:
      'No column names the tree; the limbs of each sheet count as one tree with the name of the sheet.',
    remedy: 'Add a column headed “Tree” if that is not right.'
  },
  'joined-by': {
    level: 'doubt',
    message:
      'The limbs of {cell} name their trees by the same values in two columns, {columns}. Is that right?',
    remedy: 'If it is, do nothing; otherwise give both tables the id of the tree under “Tree”.'
  },
  'joined-by-number': {
    level: 'doubt',
    message:
      'The limbs of {cell} write the ids of their trees in another way: “{one}” counts as the same tree as “{other}”. Is that right?',
    remedy: 'If it is, do nothing; otherwise write the ids alike in both tables.'
  },
  'ids-within-limbs': {
    level: 'doubt',
    message:
      'No column names the tree, but the ids of the limbs at {cell} seem to hold it, as in “{text}”. Is that right? They were read so.',
    remedy: 'If it is, do nothing; otherwise add a column headed “Tree”.'
  },
  'ids-from-lines': {
    level: 'doubt',
    message:
      'No column names the trees at {cell}; the limbs below each line of text count as those of one tree.',
    remedy: 'Add a column headed “Tree” if that is not right.'
  },
  'id-from-row': {
    level: 'doubt',
    message: 'No column names the trees at {cell}; each row counts as a tree of its own.',
    remedy: 'Add a column headed “Tree” with the number of each tree.'
  },
  'no-unit': {
    level: 'doubt',
    message: 'The header “{text}” at {cell} names no unit; its numbers are read as {unit}.',
    remedy: 'Write the unit into the header, for instance “{text} ({unit})”.'
  },
  'unit-contested': {
    level: 'doubt',
    message:
      'The header “{text}” at {cell} names no unit; its numbers are read as {unit}{from}, though “{other}” is in {otherUnit}.',
    remedy: 'Write the unit into the header, for instance “{text} ({unit})”.'
  },
  'mixed-units': {
    level: 'doubt',
    message: '{column} at {cell} reads “{text}” in a column of {unit}; it was converted to {value} {unit}.',
    remedy: 'Type the number in {unit}, without a unit.'
  },
  'mixed-diameter-units': {
    level: 'doubt',
    message: '{column} at {cell} is in {unit} while other diameters are in {other}; both were converted.',
    remedy: 'Check that the unit in the header is the unit that was measured in.'
  },
  'mixed-height-units': {
    level: 'doubt',
    message: '{column} at {cell} is in {unit} while other heights are in {other}; both were converted.',
    remedy: 'Check that the unit in the header is the unit that was measured in.'
  },
  'not-a-number': {
    level: 'row',
    message: '{column} at {cell} reads “{text}”, which is not a number.',
    remedy: 'Type the measured number alone.'
  },
  'number-two-ways': {
    level: 'row',
    message:
      '{column} at {cell} reads “{text}”, which can be {low} or {high}: no other number in its column shows whether the {sign} stands before decimals or parts thousands.',
    remedy: 'Type {high} without the {sign}, or {low} as “{clear}”.'
  },
  'not-finite': {
    level: 'row',
    message: '{column} at {cell} holds the result {text} of a formula, which is not a finite number.',
    remedy: 'Correct the formula in that cell, or type the measured value.'
  },
  'date-not-number': {
    level: 'row',
    message: '{column} at {cell} holds a date, “{text}”, and not a number.',
    remedy:
      'Set the format of the cell to a number and type the measured value; spreadsheets turn entries such as 2-3 into dates.'
  },
  'error-cell': {
    level: 'row',
    message: '{column} at {cell} holds the spreadsheet error {text}.',
    remedy: 'Correct the formula in that cell, or type the measured value.'
  },
  'not-positive': {
    level: 'row',
    message: '{column} at {cell} is {text}; it has to be more than 0.',
    remedy: 'Measure it again, or clear the cell if it was not measured.'
  },
  negative: {
    level: 'row',
    message: '{column} at {cell} is {text}; it cannot be below 0.',
    remedy: 'Type the value without the minus sign, or clear the cell if it was not measured.'
  },
  'too-large': {
    level: 'row',
    message: '{column} at {cell} is {text} {unit}, more than the {limit} that a tree can have.',
    remedy: 'Check the number and the unit in the header.'
  },
  'not-a-share': {
    level: 'row',
    message: '{column} at {cell} reads {text}; a share is between 0 and 1, or a percentage up to 100 %.',
    remedy: 'Type a share such as 0.15 or 15 %.'
  },
  'whole-percent': {
    level: 'doubt',
    message: '{column} at {cell} reads {text} and was taken as {text} %.',
    remedy: 'Type {text} % to be clear.'
  },
  'not-a-choice': {
    level: 'row',
    message: '{column} at {cell} reads “{text}”, which is not one of {choices}.',
    remedy: 'Choose one of {choices}, or clear the cell where it is not known.'
  },
  'choice-number': {
    level: 'row',
    message: '{column} at {cell} reads {text}, a number and not a word: what does it mean?',
    remedy: 'Type {choices} instead of the number, or the word beside it, such as “{text} - {value}”.'
  },
  'not-a-date': {
    level: 'doubt',
    message: '{column} at {cell} reads “{text}”, which is not a date.',
    remedy: 'Type a date or a year.'
  },
  'side-unread': {
    level: 'doubt',
    message:
      '{column} at {cell} reads “{text}”, which is no direction; limbs on all sides count as on that side.',
    remedy: 'Type a compass point such as NE, or degrees from north such as 45; all if every side is meant.'
  },
  'inexact-value': {
    level: 'doubt',
    message: '{column} at {cell} reads “{text}”, {manner}; it was taken as {value} {unit}.',
    remedy: 'Measure it and type the number alone, or do nothing if that is near enough.'
  },
  'inexact-diameter': {
    level: 'row',
    message: '{column} at {cell} reads “{text}”, {manner} and not a number that a limb can be judged by.',
    remedy: 'Measure it and type one number, or an estimate such as ~12.'
  },
  'inexact-share': {
    level: 'doubt',
    message: '{column} at {cell} reads “{text}”, {manner}; it was taken as {value}.',
    remedy: 'Type one share such as 15 %, or do nothing if that is near enough.'
  },
  'two-readings': {
    level: 'doubt',
    message:
      '{column} at {cell} reads “{text}”, which was taken as two readings with a mean of {value} {unit}.',
    remedy: 'Nothing to do if it was measured twice; otherwise type one number.'
  },
  'fraction-or-two': {
    level: 'row',
    message: '{column} at {cell} reads “{text}”, which can be a fraction or two readings.',
    remedy: 'Type one number with decimals.'
  },
  'girth-in-cell': {
    level: 'note',
    message: '{column} at {cell} reads “{text}”, a girth; divided by π it is a diameter of {value} {unit}.',
    remedy: 'Nothing to do.'
  },
  'diameter-in-girths': {
    level: 'doubt',
    message: '{column} at {cell} reads “{text}”, a diameter in a column of girths; it was not divided by π.',
    remedy: 'Type the girth, or do nothing if it is a diameter.'
  },
  'girth-column': {
    level: 'note',
    message: 'The column “{text}” at {cell} gives girths; each was divided by π to a diameter.',
    remedy: 'Nothing to do, unless the column gives diameters.'
  },
  'share-or-percent': {
    level: 'doubt',
    message:
      '{column} at {cell} reads {text} among percentages: is it {low} or {high}? It was taken as {value}.',
    remedy: 'Type it with its sign, for instance {value}.'
  },
  'missing-codes': {
    level: 'note',
    message:
      '{column} reads {codes} in {count} of its cells, the first at {cell}: taken as not measured, like blank cells.',
    remedy: 'Nothing to do, or type the measured values.'
  },
  'ticks-taken': {
    level: 'note',
    message:
      '{column} reads {codes} in {count} of its cells, the first at {cell}; each was taken as “{value}”.',
    remedy: 'Type {choices} where that is not right.'
  },
  'choice-scale': {
    level: 'doubt',
    message:
      '{column} at {cell} is given in numbers ({codes}) and not in words: which of them means what? Its {count} cells were taken as not given.',
    remedy: 'Type {choices} instead of the numbers, or the word beside the number, such as “1 - {value}”.'
  },
  'vigor-dead': {
    level: 'doubt',
    message:
      '{column} at {cell} reads “{text}”: is the whole tree dead? It was planned as in poor vigor, so that nothing live is cut.',
    remedy: 'Take a dead tree out of the inventory, or type its vigor.'
  },
  'limb-without-tree': {
    level: 'row',
    message: 'The limb in row {row} ({cell}) belongs to no tree.',
    remedy: 'Type the tree’s id in {cell}.'
  },
  'duplicate-limb': {
    level: 'row',
    message: 'Limb {limb} of tree {tree} at {cell} was already given at {other}; the first row is planned.',
    remedy: 'Give each limb of a tree an id of its own.'
  },
  'row-repeated': {
    level: 'row',
    message:
      'The row of limb {limb} of tree {tree} at {cell} says again what the row at {other} says, cell for cell; the first one is planned.',
    remedy: 'Delete one of the two rows; if they are two limbs, measure each and give it an id of its own.'
  },
  'duplicate-tree': {
    level: 'doubt',
    message:
      'Tree {tree} has two values for {column}: {first} at {other} and {text} at {cell}; the first is used.',
    remedy: 'Keep one value per tree, or give the second tree an id of its own.'
  },
  'parent-unknown': {
    level: 'row',
    message: 'Limb {limb} at {cell} names the parent {text}, which tree {tree} does not list.',
    remedy: 'Correct the parent’s id, or clear it if the limb grows from the trunk.'
  },
  'parent-loop': {
    level: 'row',
    message: 'Limb {limb} at {cell} is, through its parents, its own parent.',
    remedy: 'Correct the parent so that the chain ends at the trunk.'
  },
  'parent-dead': {
    level: 'row',
    message: 'Limb {limb} at {cell} is live and grows on {text}, which is dead: would it go with that limb?',
    remedy:
      'If only the end of that limb is dead, list it as broken with the break height; otherwise correct which of them lives.'
  },
  'missing-value': {
    level: 'row',
    message:
      'The {column} is missing at {cell}, and limb {limb} of tree {tree} cannot be planned without it.',
    remedy: 'Measure it and type it in {cell}.'
  },
  'needed-column': {
    level: 'row',
    message: 'No column gives {column}, and limbs cannot be planned without it.',
    remedy: 'Add a column headed “{name}”, or choose the column that holds it.'
  },
  'assumed-column': {
    level: 'doubt',
    message: 'No column gives the {column}; every tree was planned as {value}.',
    remedy: 'Add a column headed “{name}” if that is not right, or choose the column that holds it.'
  },
  'crown-base-asked': {
    level: 'doubt',
    message:
      'No column was found for the crown base height. Is it {choices}, or is that the depth of the crown?',
    remedy:
      'Choose “Crown base height” for the column that holds it, or head the column so; otherwise do nothing.'
  },
  'clearance-aside': {
    level: 'doubt',
    message:
      'Is “{text}” at {cell} the height to keep free under the crown, or a distance to keep from lines, as “{other}” suggests? It is not used.',
    remedy: 'Choose “Clearance needed” for the column if it is a height above ground; otherwise do nothing.'
  },
  'crown-asked': {
    level: 'doubt',
    message:
      'Of the crown, “{text}” at {cell} ({values}) gives one length: {others}, or the height of its base? It is not used.',
    remedy:
      'Choose “Crown base height” or “Crown spread” for the column, or head it so; if it is the depth, do nothing.'
  },
  'no-crown-base-column': {
    level: 'doubt',
    message:
      'No column gives the crown base height; the lowest foliage or origin among the limbs of each tree was taken, and a tree without either cannot be judged.',
    remedy:
      'Measure the height of the lowest live foliage of each tree and add it in a column headed “Crown base height”.'
  },
  'missing-tree-value': {
    level: 'row',
    message: 'Tree {tree} has no {column} ({cell}), and its limbs cannot be judged without it.',
    remedy: 'Type it in any row of the tree.'
  },
  'assumed-value': {
    level: 'doubt',
    message: 'Tree {tree} has no {column} ({cell}); it was planned as {value}.',
    remedy: 'Type it in {cell} if that is not right.'
  },
  'crown-base-assumed': {
    level: 'doubt',
    message:
      'Tree {tree} has no crown base height ({cell}); the lowest foliage or origin among its limbs, {value}, was taken.',
    remedy: 'Measure the height of the lowest live foliage and type it in {cell}.'
  },
  'tip-below-origin': {
    level: 'note',
    message:
      'Limb {limb} of tree {tree} has its tip ({cell}) below its origin; it is treated as a drooping limb.',
    remedy: 'Nothing to do if it droops; otherwise check whether the two heights were swapped.'
  },
  'foliage-above-tip': {
    level: 'doubt',
    message:
      '{column} at {cell} reads “{text}”, above the tip of limb {limb} of tree {tree}; it was left out.',
    remedy: 'Check it against the tip height, and their units.'
  },
  'outside-limb': {
    level: 'doubt',
    message:
      '{column} at {cell} reads “{text}”, which is not between the origin and the tip of limb {limb} of tree {tree}; it was left out.',
    remedy: 'Check it against the two heights, and their units.'
  },
  'clearance-all-sides': {
    level: 'note',
    message: 'Tree {tree} needs a clearance of {value} ({cell}) and no side is given: it holds on all sides.',
    remedy: 'Nothing to do if it does; otherwise give the side, a compass point such as NE.'
  },
  'tip-above-tree': {
    level: 'doubt',
    message: 'Limb {limb} of tree {tree} has its tip at {cell} above the tree’s height of {value}.',
    remedy: 'Measure the height of the tree again: it reaches to its highest tip.'
  },
  'origin-above-tree': {
    level: 'row',
    message: 'Limb {limb} of tree {tree} starts at {cell}, above the tree’s height of {value}.',
    remedy: 'Check the origin height and its unit.'
  },
  'crown-base-above-top': {
    level: 'row',
    message: 'Tree {tree} has its crown base at {cell}, not below its height of {value}.',
    remedy: 'Check both heights and their units.'
  },
  'thicker-than-stem': {
    level: 'doubt',
    message:
      'Limb {limb} of tree {tree} at {cell} is thicker than the stem above its union ({value} of it): it has overtaken the leader.',
    remedy: 'Confirm on site which stem is the leader.'
  },
  'union-impossible': {
    level: 'row',
    message:
      'Limb {limb} of tree {tree} at {cell} was measured against the stem below the union, and the limbs there are together as thick as that stem or thicker.',
    remedy: 'Measure the stem just above the union, or check the two diameters.'
  },
  'leader-twice': {
    level: 'doubt',
    message:
      'Tree {tree} has more than one row marked as leader; {limb} is kept and the row at {cell} is treated as a limb.',
    remedy: 'Mark one leader per tree.'
  },
  'leader-assumed': {
    level: 'note',
    message: 'Tree {tree} has no row marked as leader; {value} was taken ({cell}).',
    remedy: 'Confirm on site, or mark the leader in the role column.'
  },
  'leader-unknown': {
    level: 'note',
    message:
      'Tree {tree} has no row marked as leader, and no stem diameter to tell it by ({cell}); the likeliest of its limbs is {name}.',
    remedy: 'Decide on site, and type leader in the role column of the stem that is kept.'
  },
  'stem-beside-leader': {
    level: 'doubt',
    message:
      'Limb {limb} of tree {tree} has no stem diameter ({cell}); leader {other} beside it, {value} thick, was taken for it.',
    remedy: 'Measure the stem just above the union if another one carries on.'
  },
  'leader-lost': {
    level: 'doubt',
    message: 'The leader {limb} of tree {tree} is {what} ({cell}); {value}.',
    remedy: 'Decide on site which stem takes over, and mark it as leader.'
  },
  'many-leaders': {
    level: 'note',
    message:
      'Tree {tree} has {count} limbs that compete with the leader ({cell}): half of them are cut at the first visit and the rest at the second.',
    remedy: 'Nothing to do; two stages are the rule where more than three stems compete.'
  },
  'stems-combined': {
    level: 'note',
    message:
      '{column} at {cell} gives {count} stems; they count as one of {value} {unit}, the square root of the sum of their squares.',
    remedy: 'Nothing to do, unless your local rule combines stems in another way.'
  },
  'all-temporary': {
    level: 'note',
    message:
      'Tree {tree} has a trunk of {value} ({cell}): while it is under {limit} every limb on it will be removed in time.',
    remedy: 'Keep low limbs short rather than removing them early, and choose permanent limbs later.'
  },
  'scaffold-spacing': {
    level: 'note',
    message:
      'Limbs {limb} and {other} of tree {tree} start {value} apart on the same side ({cell}); permanent limbs need {limit}.',
    remedy: 'Keep the better one as permanent and the other short, or removed in time.'
  },
  'permanent-close': {
    level: 'note',
    message:
      'Limbs {limb} and {other} of tree {tree} are both marked permanent and start {value} apart ({cell}); permanent limbs stand {limit} apart at least, and not above each other on one side.',
    remedy: 'Nothing to do if both are to stay; otherwise mark one of them as not permanent.'
  },
  'permanent-low': {
    level: 'note',
    message:
      'Limb {limb} of tree {tree} is marked permanent and starts at {value} ({cell}), below the lowest permanent limb at {limit}.',
    remedy: 'Nothing to do if it is to stay; otherwise mark it as not permanent.'
  },
  'permanent-lost': {
    level: 'doubt',
    message:
      'Limb {limb} of tree {tree} is marked permanent and is {what} ({cell}); it is cut as {what} wood all the same.',
    remedy: 'Check both cells, and choose another limb as permanent.'
  },
  'permanent-temporary': {
    level: 'doubt',
    message:
      'Limb {limb} of tree {tree} is marked permanent ({cell}), and its role is temporary; it counts as permanent.',
    remedy: 'Clear one of the two cells.'
  },
  'scaffold-missing': {
    level: 'note',
    message: 'Tree {tree} has no permanent limbs chosen ({cell}): that needs {value}.',
    remedy: 'Add it to choose permanent limbs; nothing is claimed without it.'
  },
  'limbs-thicker': {
    level: 'doubt',
    message:
      'In {count} of {total} limbs compared the “{text}” ({cell}) is larger than the “{other}” at {place}: are the two columns swapped? They are used as they stand.',
    remedy: 'Exchange the two headers if they are.'
  },
  'heights-swapped': {
    level: 'doubt',
    message:
      'In {count} of {total} limbs compared the “{text}” ({cell}) lies below the “{other}” at {place}, so that the tip is below its origin: are the two columns swapped? They are used as they stand.',
    remedy: 'Exchange the two headers if they are.'
  },
  'sizes-unlikely': {
    level: 'doubt',
    message:
      'By “{text}” ({cell}, read as {unit}) and “{other}” ({place}, read as {otherUnit}) {what}, where {low} to {high} times is usual: {question}? They are used as they stand.',
    remedy: 'Correct the units in the headers, or choose them.'
  },
  'tips-unlikely': {
    level: 'doubt',
    message:
      'By “{text}” ({cell}, read as {unit}) the limbs of a typical tree reach {value} of its height: is it in {question}? It is used as it stands.',
    remedy: 'Correct the unit in the header, or choose it.'
  },
  'tree-unit': {
    level: 'doubt',
    message:
      'Tree {tree} has a {what} of {value} at {cell} beside {beside}: {times} times as high as thick, where a typical tree here is {typical} times. Was it typed in {unit}, which would be {other}? It is used as it stands.',
    remedy: 'Check the {what}; if it is in {unit}, type it with its unit.'
  },
  'tree-shape': {
    level: 'doubt',
    message:
      'Tree {tree} has a height of {height} at {cell} and a trunk diameter of {diameter}: {value} times as high as thick. Are both right? They are used as they stand.',
    remedy: 'Check the height, the trunk diameter and their units.'
  },
  'thicker-than-trunk': {
    level: 'doubt',
    message:
      'Limb {limb} of tree {tree} has {what} {value} at {cell}, far thicker than the trunk of {diameter}. Are the numbers and their units right? They are used as they stand.',
    remedy: 'Check the two diameters and their units: limbs and trunk may be in different ones.'
  },
  'row-shifted': {
    level: 'row',
    message:
      'The row at {cell} holds more cells than there are headers, so that its values stand under the wrong ones; it was not read.',
    remedy: 'Put values that hold a comma in quotation marks, or add the headers that are missing.'
  },
  'leader-by-name': {
    level: 'note',
    message: 'No column gives the role of a limb; rows named as “{text}” at {cell} are taken for the leader.',
    remedy: 'Nothing to do if it is; otherwise add a column headed “Role”.'
  },
  'crown-base-above-limbs': {
    level: 'doubt',
    message:
      'Tree {tree} has its crown base at {cell}, {value}, above the origin of every live limb that is listed; the lowest starts at {other}. Is that right? It is used as it stands.',
    remedy: 'Check the crown base height: it is the height of the lowest live foliage.'
  },
  'limbs-alike': {
    level: 'doubt',
    message:
      'Limbs {limb} and {other} of tree {tree} ({cell}) have the same measurements throughout. Was one limb entered twice? Both are planned.',
    remedy: 'Remove one of the two rows if it was.'
  },
  'rule-value': {
    level: 'doubt',
    message:
      'The rule “{rule}” at {cell} reads “{text}”, which is not a number; its default {value} is used.',
    remedy: 'Type a number from {low} to {high} ({unit}), or clear the cell to use the default.'
  },
  'rule-unit': {
    level: 'doubt',
    message:
      'The rule “{rule}” has “{text}” at {cell} where the unit of a length belongs; its default, {value} mm, is used.',
    remedy: 'Type mm, cm, m, in or ft there, or clear the cell for mm.'
  },
  'rule-two-ways': {
    level: 'doubt',
    message:
      'The rule “{rule}” at {cell} reads “{text}”, which can be {low} or {high}: no other number on the sheet shows whether the {sign} stands before decimals or parts thousands; its default {value} is used.',
    remedy: 'Type {high} without the {sign}, or {low} as “{clear}”.'
  },
  'rule-not-finite': {
    level: 'doubt',
    message:
      'The rule “{rule}” at {cell} holds the result {text} of a formula, which is not a finite number; its default {value} is used.',
    remedy: 'Correct the formula in that cell, or clear the cell to use the default.'
  },
  'rule-date': {
    level: 'doubt',
    message:
      'The rule “{rule}” at {cell} holds a date, “{text}”, and not a number; its default {value} is used.',
    remedy:
      'Set the format of the cell to a number and type the value; spreadsheets turn entries such as 2-3 into dates.'
  },
  'rule-range': {
    level: 'doubt',
    message:
      'The rule “{rule}” at {cell} is {text}, outside its range of {low} to {high} ({unit}); its default {value} is used.',
    remedy: 'Type a number from {low} to {high}, or clear the cell to use the default.'
  },
  'rule-not-whole': {
    level: 'doubt',
    message: 'The rule “{rule}” at {cell} is {text}, not a whole number; its default {value} is used.',
    remedy: 'Type a whole number from {low} to {high}, or clear the cell to use the default.'
  },
  'rule-reason': {
    level: 'doubt',
    message:
      'The rule “{rule}” at {cell} is raised from {value} to {text} without a written reason; the default {value} is used.',
    remedy: 'Write the reason in its row, under “Reason for a change”, or go back to {value}.'
  },
  'rule-order': {
    level: 'doubt',
    message:
      'The rule “{rule}” at {cell} is {text}, more than “{next}” at {other}; the defaults of both are used.',
    remedy: 'Lower the first or raise the second.'
  },
  'rule-weights': {
    level: 'doubt',
    message:
      'The weights of the priority ({cell}) add up to {text} instead of 1, so that priorities would not run to 100; the default weights are used.',
    remedy: 'Change the weights so that they add up to 1.'
  },
  'rule-weights-none': {
    level: 'doubt',
    message:
      'The weights of the choice of the leader ({cell}) are all 0, so that no stem would be preferred; the default weights are used.',
    remedy: 'Give at least one of them more than 0.'
  },
  'rule-unknown': {
    level: 'note',
    message: 'The row “{text}” at {cell} names no rule; it is left as it is.',
    remedy: 'Nothing to do, or correct the name of the rule.'
  },
  'rule-twice': {
    level: 'doubt',
    message: 'The rule “{rule}” at {cell} was already given at {other}; the first row is used.',
    remedy: 'Remove one of the two rows.'
  },
  'rules-unreadable': {
    level: 'doubt',
    message: 'No headers were found on the sheet {sheet} of rules ({cell}); every rule keeps its default.',
    remedy: 'Name its columns Rule, Value and Reason for a change, or remove the sheet and write a new one.'
  },
  'users-sheet-exists': {
    level: 'stop',
    message: 'There is already a sheet {cell} in this workbook; it is yours and is not replaced.',
    remedy: 'Change the values there. To start over, delete that sheet first.'
  },
  'timing-answer': {
    level: 'doubt',
    message: '“{question}” at {cell} reads “{text}”, which is not {choices}; it counts as not answered.',
    remedy: 'Type {choices}, or clear the cell.'
  },
  'region-unknown': {
    level: 'note',
    message: 'No region is given, so no seasonal window is known and none is assumed.',
    remedy:
      'Write a Rules sheet and name the region in it, and ask there for windows on oak wilt and nesting before anyone cuts.'
  },
  'region-not-listed': {
    level: 'note',
    message:
      'For the region “{text}”{place} no window is listed for {concern}. That does not mean there is none.',
    remedy: 'Ask the forestry or wildlife agency of the region before anyone cuts.'
  },
  'closed-window': {
    level: 'note',
    message: '{sentence} Source: {source}.',
    remedy: '{remedy}.'
  },
  'observed-share-too-large': {
    level: 'doubt',
    message:
      'The observed foliage shares of tree {tree} add up to {value}, more than the whole tree ({cell}).',
    remedy: 'Check the observed shares.'
  },
  'crown-ratio-low': {
    level: 'note',
    message:
      'Tree {tree} has a live-crown ratio of {value} before any cut ({cell}), below the goal of {limit}.',
    remedy: 'Nothing may be raised; the plan keeps the crown base where it is.'
  },
  'lower-foliage-low': {
    level: 'note',
    message:
      'Tree {tree} carries {value} of its foliage in the lower two-thirds of its crown ({cell}), less than half before any cut.',
    remedy: 'The plan does not lower it further. Keep inner and lower foliage.'
  },
  'clearance-held': {
    level: 'note',
    message:
      'Tree {tree} is clear to {value} after the first visit, not to the {limit} asked for ({cell}): {why}{until}.',
    remedy: 'Raise in stages at later visits; limbs that hang lower are marked in the plan.'
  },
  palm: {
    level: 'row',
    message:
      'Tree {tree} is a palm ({cell}). Palms are outside the standards for shade trees that are used here, so no cut is planned.',
    remedy: 'Have it pruned by the standard for palms, or correct the species or the form.'
  },
  'multi-stem-proposed': {
    level: 'doubt',
    message:
      'Tree {tree} has {count} unmarked stems that rise from the ground ({cell}): it is planned as a multi-stem tree, and no stem is shortened for another.',
    remedy: 'If one stem should lead, mark it as leader; otherwise type multi-stem as the form of the tree.'
  },
  'dieback-counts': {
    level: 'note',
    message: 'Tree {tree} has a dieback of {value} ({cell}): its vigor counts as {text}.',
    remedy: 'Find the cause first; look again next season.'
  },
  'pruned-recently': {
    level: 'doubt',
    message:
      'Tree {tree} was pruned less than {count} months ago ({cell}), and how much came off is not given: nothing live is cut this season.',
    remedy: 'Type the foliage removed this season as a share, 0 if none.'
  },
  'inspect-first': {
    level: 'note',
    message: 'Limb {limb} of tree {tree} has decay or a crack noted ({cell}): no live cut is planned on it.',
    remedy: 'Inspect the limb and its union first; the arborist decides.'
  },
  'leader-decayed': {
    level: 'doubt',
    message:
      'The leader {limb} of tree {tree} has decay or a crack noted ({cell}): cuts for structure wait for the choice of the leader.',
    remedy: 'Inspect it, and decide on site which stem is the leader.'
  },
  'leader-close': {
    level: 'doubt',
    message:
      'Which of the stems {limb} and {other} of tree {tree} leads is too close to call ({cell}): cuts for structure wait for the choice of the leader.',
    remedy: 'Decide on site, and type leader in the role column of the stem that is kept.'
  },
  'foliage-below-base': {
    level: 'doubt',
    message:
      'Limb {limb} of tree {tree} has foliage down to {value} ({cell}), below the crown base of {limit}.',
    remedy: 'Check the crown base height and the lowest foliage of the limb.'
  },
  'poor-vigor': {
    level: 'note',
    message: 'Tree {tree} is in poor vigor ({cell}): no live wood is to be taken. Dead wood is still listed.',
    remedy: 'Find and treat the cause first; look again next season.'
  },
  'nothing-allowed': {
    level: 'note',
    message: 'Tree {tree} has no live foliage to spare this season ({cell}): {value}.',
    remedy: 'Return when it can spare foliage again.'
  },
  'no-limbs': {
    level: 'note',
    message: 'Tree {tree} at {cell} has no limbs listed; {given}, but no cuts.',
    remedy: 'Measure its competing limbs to get a cut plan.'
  },
  'hidden-rows': {
    level: 'note',
    message: 'Hidden or filtered rows in {cell} were included; they are too scattered to name.',
    remedy: 'Nothing to do, or select only the rows that should be planned.'
  },
  'range-changed': {
    level: 'stop',
    message: 'The cells at {cell} changed while the plan was being made.',
    remedy: 'Press the button again to plan the cells as they are now.'
  },
  'sheet-protected': {
    level: 'stop',
    message: 'The workbook or the sheet {cell} is protected, so nothing was written.',
    remedy: 'Remove the protection, or allow sheets to be added, and try again.'
  },
  'cell-editing': {
    level: 'stop',
    message: 'A cell is being edited, so the spreadsheet could not be reached.',
    remedy: 'Press Enter or Escape in the sheet, then try again.'
  },
  'not-cells': {
    level: 'stop',
    message: 'What is selected is not a block of cells.',
    remedy: 'Click a cell of the inventory, then try again.'
  },
  'address-gone': {
    level: 'stop',
    message: 'There is no cell {cell} in this workbook any more.',
    remedy: 'Press the button again to plan the cells as they are now.'
  },
  'rate-not-a-number': {
    level: 'doubt',
    message: 'The rate “{name}” at {cell} reads “{text}”, which is not a number; {value} is used.',
    remedy: 'Type the number alone in {cell}, in the unit beside it.'
  },
  'rate-two-ways': {
    level: 'doubt',
    message:
      'The rate “{name}” at {cell} reads “{text}”, which can be {low} or {high}: no other number on the sheet shows whether the {sign} stands before decimals or parts thousands; {value} is used.',
    remedy: 'Type {high} without the {sign}, or {low} as “{clear}”.'
  },
  'rate-not-finite': {
    level: 'doubt',
    message:
      'The rate “{name}” at {cell} holds the result {text} of a formula, which is not a finite number; {value} is used.',
    remedy: 'Correct the formula in that cell, or type the number alone.'
  },
  'rate-date': {
    level: 'doubt',
    message: 'The rate “{name}” at {cell} holds a date, “{text}”, and not a number; {value} is used.',
    remedy:
      'Set the format of the cell to a number and type the rate; spreadsheets turn entries such as 2-3 into dates.'
  },
  'rate-out-of-range': {
    level: 'doubt',
    message: 'The rate “{name}” at {cell} is {text}; it has to be {range}, so {value} is used.',
    remedy: 'Type a value in that range in {cell}.'
  },
  'rate-not-a-choice': {
    level: 'doubt',
    message: 'The rate “{name}” at {cell} reads “{text}”, which is not {choices}; {value} is used.',
    remedy: 'Type {choices} in {cell}.'
  },
  'rate-margin-whole': {
    level: 'doubt',
    message:
      'The margin at {cell} is {text}: a margin is the share of the price that is profit, and at 100 % or more no price covers the cost. {value} is used.',
    remedy: 'Type a margin below 100 %, or choose markup if the profit is meant as a share of the cost.'
  },
  'rate-order': {
    level: 'doubt',
    message:
      'The limit “{name}” at {cell} is {text}, not above the one before it; the limits {value} are used.',
    remedy: 'Give the limits in rising order.'
  },
  'rate-decimals': {
    level: 'doubt',
    message:
      'The currency {text} has {value} decimals and {cell} still says {digits}; prices are rounded to what the currency has.',
    remedy: 'Type the decimals that your prices have, or yes beside it to keep what stands there.'
  },
  'rate-changed-twice': {
    level: 'doubt',
    message:
      '“{name}” was changed to {text} at {cell}, and since then on the Rates sheet too; {value} of the Rates sheet is used.',
    remedy: 'Type the value that holds into the Rates sheet, then write the Estimate again.'
  },
  'rate-missing': {
    level: 'doubt',
    message: 'The rates at {cell} give no value for “{name}”; {value} is used.',
    remedy:
      'Type it in the value column of the row “{name}”; if the row is gone, add it again under that name.'
  },
  'rate-twice': {
    level: 'doubt',
    message: 'The rate “{name}” at {cell} was already given at {other}; the first is used.',
    remedy: 'Remove one of the two rows.'
  },
  'rate-unknown': {
    level: 'note',
    message: 'The row “{text}” at {cell} is no rate that the estimate knows; it is left as it is.',
    remedy: 'Nothing to do, or give the row the name of a rate if it should be used.'
  },
  'rate-unit': {
    level: 'doubt',
    message: 'The unit of “{name}” at {cell} reads “{text}”; it is read as {value}.',
    remedy: 'Type {value} in {cell}, and the rate in that unit.'
  },
  'no-rates': {
    level: 'doubt',
    message: 'No rates were found at {cell}: there is no row with the headers Rate, Value and Unit.',
    remedy: 'Put the headers back above the rates, or rename this sheet and write a new Rates sheet.'
  },
  'users-sheet': {
    level: 'stop',
    message: 'The sheet {cell} is yours and is never replaced.',
    remedy: 'Edit it, or rename or delete it if you want a fresh one.'
  },
  'detail-unusable': {
    level: 'doubt',
    message:
      'The job detail “{name}” at {cell} reads “{text}”, which is not {wanted}; it is left out as if it were blank.',
    remedy: 'Type {wanted} in {cell}, or clear the cell.'
  },
  'detail-twice': {
    level: 'doubt',
    message: 'The job detail “{name}” at {cell} was already given at {other}; the first is used.',
    remedy: 'Remove one of the two rows.'
  },
  'detail-unknown': {
    level: 'note',
    message: 'The row “{text}” at {cell} is no job detail that the documents know; it is left as it is.',
    remedy: 'Nothing to do, or give the row the name of a detail if it should be printed.'
  },
  'no-details': {
    level: 'doubt',
    message: 'No job details were found at {cell}: there is no row with the headers What and Value.',
    remedy: 'Put the headers back above the details, or delete this sheet and write a new Job details sheet.'
  },
  'details-several': {
    level: 'doubt',
    message:
      'Both sheets “{sheet}” and “{other}” give details for this inventory ({cell}); those of “{sheet}” are used.',
    remedy: 'Name in the row Inventory sheet of each which inventory it is for.'
  },
  'details-nowhere': {
    level: 'doubt',
    message:
      'The job details at {cell} are for the sheet “{text}”, which this workbook does not have; they are not used.',
    remedy: 'Type the name of the inventory’s sheet in {cell}, or clear it for every inventory.'
  },
  'logo-unusable': {
    level: 'doubt',
    message: 'The logo {text} {why}; the documents are written without it.',
    remedy:
      'Put a PNG or JPEG of at most 15 MB and 10,000 pixels on a side in its place, or leave the logo out.'
  },
  'logo-several': {
    level: 'note',
    message: 'The sheet {sheet} has {count} pictures; the one that stands highest is the logo.',
    remedy: 'Remove the others where that is not the logo.'
  },
  'photo-unusable': {
    level: 'doubt',
    message: 'The photograph {text} of tree {tree} {why}; its page in the report has none.',
    remedy:
      'Put a PNG or JPEG of at most 15 MB and 10,000 pixels on a side into a row of the tree, or beside the inventory under the name that the inventory gives it.'
  },
  'photo-files': {
    level: 'note',
    message:
      'The inventory names files of photographs, such as “{text}” at {cell}. The pane cannot open files, and leaves them out.',
    remedy: 'Put the pictures into the rows of their trees, or plan the file on the command line.'
  },
  'pictures-unread': {
    level: 'note',
    message: 'Excel did not give a picture ({text}); the documents are written without it.',
    remedy: 'Put the picture in again as PNG or JPEG, and write again.'
  },
  'detail-year-past': {
    level: 'doubt',
    message: 'The first work year {text} is over on the day of the plan; {year} is used.',
    remedy: 'Give {year} or a later year as the first work year.'
  },
  'detail-prices-over': {
    level: 'doubt',
    message: 'The prices hold until {text}, which is before the date of the documents, {date}.',
    remedy: 'Give a later day until which the prices hold, or leave it blank for the days on the Rates sheet.'
  },
  'detail-prices-early': {
    level: 'note',
    message: 'The prices hold until {text}, which is before the first visit in {year}.',
    remedy:
      'Nothing to do where the client signs before that day; otherwise give a later day until which the prices hold.'
  },
  'other-workbook': {
    level: 'stop',
    message: 'Another workbook is in front, so this one could not be reached.',
    remedy: 'Bring this workbook to the front, then try again.'
  },
  'chart-sheet': {
    level: 'stop',
    message: 'The sheet in front is a chart, which holds no cells.',
    remedy: 'Click a cell of the inventory, then try again.'
  },
  'document-changed': {
    level: 'stop',
    message:
      'The sheet {cell} was renamed, deleted or given another title while it was to be replaced, so nothing was written.',
    remedy: 'Press the button again to write with the sheets as they are now.'
  },
  'drafts-left': {
    level: 'stop',
    message: '{text} Begun for it and left hidden: {cell}.',
    remedy: 'Try again, which takes that away first.'
  },
  'written-without': {
    level: 'doubt',
    message: 'Written without {text}: the spreadsheet did not take that.',
    remedy: 'Write again to try once more; the rest of the documents is complete.'
  },
  'spreadsheet-failed': {
    level: 'stop',
    message: 'The spreadsheet did not do what was asked: {text}',
    remedy: 'Try again. If it happens again, save the workbook, open it again and try once more.'
  }
} as const satisfies Record<string, Entry>

export type ProblemCode = keyof typeof catalog

type Fact = string | number

/** What the sentences of a problem were filled with. */
export type Facts = Readonly<Record<string, Fact | undefined>>

/** A place without a cell, such as a row that lacks the column: how a sentence names it, and where to type instead. */
export interface Place {
  readonly said: string
  readonly typeIn: string
  /** The row as the sheet counts it, from 1, and the header that is missing. */
  readonly row: number
  readonly header: string
}

export interface Problem {
  readonly code: ProblemCode
  readonly level: ProblemLevel
  /** The cell's address with its sheet, or an empty text where no single cell is meant; of several, the first. */
  readonly cell: string
  readonly message: string
  readonly remedy: string
  readonly facts: Facts
  /** Where there is no cell, or null. */
  readonly place: Place | null
  /** What is taken instead, where that was added to the sentence of the catalog. */
  readonly instead?: string
  /** Several problems of one cause, each with its own cell and sentence, for which this one stands. */
  readonly of?: readonly Problem[]
  /** What cannot be planned because of it, in a sentence to stand beneath it. */
  readonly waits?: string
}

/** The words in braces of a sentence. */
type FactNames<Sentence extends string> = Sentence extends `${string}{${infer Name}}${infer Rest}`
  ? Name | FactNames<Rest>
  : never

type Sentences<Code extends ProblemCode> = (typeof catalog)[Code]['message' | 'remedy']

/** Every fact that the sentences of a code need; of several codes, what all of them need together. */
export type FactsOf<Code extends ProblemCode> = Readonly<
  Record<Exclude<FactNames<Sentences<Code>>, 'cell'>, Fact>
> & { readonly cell?: Fact }

/** The facts as an argument, which may be left out where none is needed; `Known` are those that the caller adds. */
export type FactsGiven<Code extends ProblemCode, Known extends string = never> = [
  Exclude<FactNames<Sentences<Code>>, 'cell' | Known>
] extends [never]
  ? [facts?: Readonly<Partial<Record<Known | 'cell', Fact>>>]
  : [facts: Omit<FactsOf<Code>, Known> & Readonly<Partial<Record<Known, Fact>>>]

/** A sentence taken apart once: text at the even places, the name of a fact at the odd ones. */
const parts = new Map<string, readonly string[]>()

const noFacts: Facts = {}

/** `cell` is what stands for {cell}, unless the facts say otherwise. */
function fill(sentence: string, cell: string, facts: Facts): string {
  let pieces = parts.get(sentence)
  if (pieces === undefined) {
    pieces = sentence.split(/\{(\w+)\}/)
    parts.set(sentence, pieces)
  }
  let filled = pieces[0] ?? ''
  for (let at = 1; at < pieces.length; at += 2) {
    const name = pieces[at] ?? ''
    const fact = facts[name] ?? (name === 'cell' ? cell : `{${name}}`)
    filled += String(fact) + (pieces[at + 1] ?? '')
  }
  return filled
}

/** A problem from the catalog, its sentence filled with the facts, at the address of a cell or at a place. */
export function problem<Code extends ProblemCode>(
  code: Code,
  at: string | Place,
  ...[facts]: FactsGiven<Code>
): Problem {
  const entry: Entry = catalog[code]
  const [cell, said, typeIn] = typeof at === 'string' ? [at, at, at] : ['', at.said, at.typeIn]
  const known: Facts = facts ?? noFacts
  const message = fill(entry.message, said, known)
  const remedy = fill(entry.remedy, typeIn, known)
  const place = typeof at === 'string' ? null : at
  return { code, level: entry.level, cell, message, remedy, facts: known, place }
}

/** The same problem, taken less seriously: the row is planned, and the sentence says with what instead. */
export function asDoubt(found: Problem, instead: string): Problem {
  const message = `${found.message.replace(/\.$/, '')}; ${instead}.`
  return { ...found, level: 'doubt', message, instead }
}

/** Every code, for the tests and the documentation. */
export const problemCodes = Object.keys(catalog) as ProblemCode[]
