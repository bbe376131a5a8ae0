import type { FactsOf, ProblemCode } from './problems'

/**
 * The sentences about several problems of one cause. Words in braces are:
 *
 * - {count}: how many there are, always two or more; {cells}: where, the first few and their range; {rows}: by their rows.
 * - {columns}, {texts}, {names}, {rules}: the different columns, texts, rates and rules, quoted, at most three.
 * - {ids}: trees by their ids alone; {trees}: "tree T1", "trees T1, T2, T3 and 9 more".
 * - A fact by its name: its value where all have the same, otherwise up to three of them; with a 1, that of the first.
 *
 * A remedy names no cell. Where there is no sentence, the problem comes once for a file, or is a question of its own.
 */
export interface Several {
  readonly message: string
  readonly remedy: string
  /** One cause over all columns: what is wrong with headers. */
  readonly across?: true
  /** Facts that make it another cause where they differ. */
  readonly by?: readonly string[]
}

type SeveralOf<Code extends ProblemCode> = Several & { readonly by?: readonly (keyof FactsOf<Code>)[] }

const twoReadings =
  'Type each so that one reading is left: “{text1}” as {high1} without the {sign1}, or {low1} as “{clear1}”.'

/** By the same codes as the catalog of problems, in its order. */
export const severalOf: { readonly [Code in ProblemCode]: SeveralOf<Code> | null } = {
  'empty-selection': null,
  'headers-only': null,
  'no-headers': null,
  'no-trees-here': null,
  'no-measures': null,
  'missing-column': null,
  'several-areas': null,
  'species-joined': {
    message:
      'Columns of {count} tables name the species of each tree together, and are read as one name: {cells}.',
    remedy: 'Nothing to do if they belong together.'
  },
  'column-twice': {
    message:
      '{count} headers mean what another column already gives ({columns}): {cells}; the others are used.',
    remedy: 'Rename or remove one of each two columns.',
    across: true
  },
  'column-unknown': {
    message: '{count} columns are not ones the plan uses ({texts}): {cells}; they are left as they are.',
    remedy: 'Nothing to do, or rename the header of a column that should be used.',
    across: true
  },
  'measures-doubled': null,
  'girths-doubled': null,
  'years-doubled': null,
  'inches-apart': null,
  'column-of-two': null,
  'column-likely': null,
  'columns-unknown': null,
  'block-beside': null,
  'column-asked': null,
  'sheets-left-out': null,
  'hidden-sheets-left-out': null,
  'tables-joined': null,
  'tables-stacked': null,
  'forms-read': null,
  'table-turned': null,
  'form-alone': null,
  'one-measurement-a-row': null,
  'record-kinds': null,
  'column-parted': null,
  'measures-parted': null,
  'sizes-in-texts': null,
  'text-marks': null,
  'answers-ticked': null,
  'ids-are-dates': null,
  'limb-ids-alike': null,
  'signs-by-size': null,
  'group-lacks': null,
  'tree-tall': {
    message:
      '{count} trees are far higher than the others ({trees}): {cells}. Are they typed in another unit than {unit}? They are used as they stand.',
    remedy: 'Type their heights in {unit}, like those of the other trees.'
  },
  'trunks-thinner': null,
  'columns-beyond': null,
  'headers-explained': null,
  'columns-in-groups': null,
  'trees-in-columns': null,
  'headers-again': null,
  'totals-left-out': null,
  'notes-left-out': null,
  'zones-from-lines': {
    message:
      'Zones of trees are read from the lines of text between the rows of {count} tables, such as “{zone1}”: {cells}.',
    remedy: 'Nothing to do if these are zones; otherwise add a column headed “Zone” to each.',
    across: true
  },
  'zones-from-sheets': null,
  'sizes-from-lines': null,
  'sizes-from-notes': null,
  'sizes-in-lines': null,
  'no-trees-left-out': null,
  'said-no-trees': null,
  'rows-hidden': null,
  'columns-hidden': null,
  'ids-alike': null,
  'several-trees': {
    message:
      '{count} ids stand for several trees each, as their rows differ in {fields}: {cells}. They are planned as separate trees: {trees1} and so on.',
    remedy: 'Check these trees, and give each an id of its own.'
  },
  'earlier-surveys': null,
  'same-trees-again': null,
  'limb-of-several': {
    message: '{count} limbs name an id that several trees bear ({trees}): {cells}.',
    remedy: 'Give each tree an id of its own, in both tables.'
  },
  'tree-not-listed': {
    message: '{count} rows name a tree that is not listed among the trees ({ids}): {cells}.',
    remedy: 'Add the trees to the list, or correct their ids.'
  },
  'ids-below': null,
  'id-from-sheet': null,
  'joined-by': null,
  'joined-by-number': null,
  'ids-within-limbs': null,
  'ids-from-lines': null,
  'id-from-row': null,
  'no-unit': {
    message: '{count} headers name no unit ({texts}): {cells}; their numbers are read as {unit}.',
    remedy: 'Write the unit into each header, for instance “{text1} ({unit})”.',
    across: true,
    by: ['unit']
  },
  'unit-contested': {
    message:
      '{count} headers name no unit ({texts}): {cells}; their numbers are read as {unit}, though “{other}” is in {otherUnit}.',
    remedy: 'Write the unit into each header, for instance “{text1} ({unit})”.',
    across: true,
    by: ['unit', 'other', 'otherUnit']
  },
  'mixed-units': {
    message:
      '{count} cells of {columns} name another unit than {unit}, that of their column: {cells}. They read {texts} and were converted.',
    remedy: 'Type the numbers in {unit}, without a unit.'
  },
  'mixed-diameter-units': {
    message:
      '{count} columns of diameters ({columns}) are in {unit} while other diameters are in {other}: {cells}; all were converted.',
    remedy: 'Check that the units in the headers are the units that were measured in.',
    across: true,
    by: ['unit', 'other']
  },
  'mixed-height-units': {
    message:
      '{count} columns of heights ({columns}) are in {unit} while other heights are in {other}: {cells}; all were converted.',
    remedy: 'Check that the units in the headers are the units that were measured in.',
    across: true,
    by: ['unit', 'other']
  },
  'not-a-number': {
    message: '{count} cells of {columns} hold what is not a number: {cells}. They read {texts}.',
    remedy: 'Type the measured number alone in each.'
  },
  'number-two-ways': {
    message:
      '{count} cells of {columns} can each be two numbers: {cells}. They read {texts}, and no other number in their column shows whether the {sign} stands before decimals or parts thousands.',
    remedy: twoReadings
  },
  'not-finite': {
    message: '{count} cells of {columns} hold results of formulas that are not finite numbers: {cells}.',
    remedy: 'Correct the formulas in those cells, or type the measured values.'
  },
  'date-not-number': {
    message: '{count} cells of {columns} hold dates and not numbers: {cells}. They read {texts}.',
    remedy:
      'Set the format of those cells to a number and type the measured values; spreadsheets turn entries such as 2-3 into dates.'
  },
  'error-cell': {
    message: '{count} cells of {columns} hold spreadsheet errors ({texts}): {cells}.',
    remedy: 'Correct the formulas in those cells, or type the measured values.'
  },
  'not-positive': {
    message:
      '{count} cells of {columns} are 0 or less, and have to be more than 0: {cells}. They read {texts}.',
    remedy: 'Measure again, or clear the cells where nothing was measured.'
  },
  negative: {
    message: '{count} cells of {columns} are below 0, which cannot be: {cells}. They read {texts}.',
    remedy: 'Type the values without the minus sign, or clear the cells where nothing was measured.'
  },
  'too-large': {
    message:
      '{count} cells of {columns} hold more than the {limit} that a tree can have: {cells}. They read {texts}.',
    remedy: 'Check the numbers and the unit in the header.'
  },
  'not-a-share': {
    message:
      '{count} cells of {columns} hold no share: {cells}. They read {texts}; a share is between 0 and 1, or a percentage up to 100 %.',
    remedy: 'Type shares such as 0.15 or 15 %.'
  },
  'whole-percent': {
    message:
      '{count} cells of {columns} read {texts} without a percent sign and were taken as percent: {cells}.',
    remedy: 'Type the percent sign to be clear, as in {text1} %.'
  },
  'not-a-choice': {
    message:
      '{count} cells of {columns} could not be read: {cells}. They read {texts}, which is not one of {choices}.',
    remedy: 'Choose one of {choices} in each, or clear the cells where it is not known.',
    by: ['choices']
  },
  'choice-number': {
    message:
      '{columns} is given in numbers and not in words in {count} cells: {cells}. They read {texts}, and none of them says what it means.',
    remedy: 'Type {choices} instead of the numbers, or the word beside the number, such as “1 - {value}”.',
    by: ['choices']
  },
  'not-a-date': {
    message: '{count} cells of {columns} could not be read as a date: {cells}. They read {texts}.',
    remedy: 'Type a date or a year in each.'
  },
  'side-unread': {
    message:
      '{count} cells of {columns} name no direction: {cells}. They read {texts}; limbs on all sides count as on that side.',
    remedy: 'Type a compass point such as NE, or degrees from north such as 45; all if every side is meant.'
  },
  'inexact-value': {
    message:
      '{count} cells of {columns} give no exact number: {cells}. They read {texts}; {value1} {unit1} was taken for “{text1}”, and so on.',
    remedy: 'Measure them and type the numbers alone, or do nothing where that is near enough.'
  },
  'inexact-diameter': {
    message:
      '{count} cells of {columns} give a range or a bound and not a number that a limb can be judged by: {cells}. They read {texts}.',
    remedy: 'Measure them and type one number in each, or an estimate such as ~12.'
  },
  'inexact-share': {
    message:
      '{count} cells of {columns} give no exact share: {cells}. They read {texts}; {value1} was taken for “{text1}”, and so on.',
    remedy: 'Type one share such as 15 % in each, or do nothing where that is near enough.'
  },
  'two-readings': {
    message:
      '{count} cells of {columns} give two readings, of which the mean was taken: {cells}. They read {texts}.',
    remedy: 'Nothing to do where it was measured twice; otherwise type one number.'
  },
  'fraction-or-two': {
    message: '{count} cells of {columns} can each be a fraction or two readings: {cells}. They read {texts}.',
    remedy: 'Type one number with decimals in each.'
  },
  'girth-in-cell': {
    message:
      '{count} cells of {columns} give a girth, which was divided by π to a diameter: {cells}. They read {texts}.',
    remedy: 'Nothing to do.'
  },
  'diameter-in-girths': {
    message:
      '{count} cells of {columns} give a diameter in a column of girths: {cells}. They read {texts} and were not divided by π.',
    remedy: 'Type the girths, or do nothing where they are diameters.'
  },
  'girth-column': {
    message: '{count} columns give girths ({texts}): {cells}; each was divided by π to a diameter.',
    remedy: 'Nothing to do, unless a column gives diameters.',
    across: true
  },
  'share-or-percent': {
    message:
      '{count} cells of {columns} read {texts} among percentages: is “{text1}” {low1} or {high1}? It was taken as {value1}, and so were the others: {cells}.',
    remedy: 'Type each with its sign, for instance {value1}.'
  },
  'missing-codes': null,
  'ticks-taken': null,
  'choice-scale': null,
  'vigor-dead': {
    message:
      '{count} cells of {columns} read {texts}: are those whole trees dead? They were planned as in poor vigor, so that nothing live is cut: {cells}.',
    remedy: 'Take dead trees out of the inventory, or type their vigor.'
  },
  'limb-without-tree': {
    message: 'The limbs in {rows} ({cells}) belong to no tree.',
    remedy: 'Type the tree’s id in each of those cells.'
  },
  'duplicate-limb': {
    message:
      '{count} rows give a limb of their tree again, which an earlier row already gives: {cells}; the first row of each is planned.',
    remedy: 'Give each limb of a tree an id of its own.'
  },
  'row-repeated': {
    message:
      '{count} rows of limbs say again what an earlier row of their tree says, cell for cell: {cells}; the first of each is planned.',
    remedy:
      'Delete the rows that repeat another; where two are two limbs, measure each and give it an id of its own.'
  },
  'duplicate-tree': {
    message:
      '{count} cells of {columns} differ from an earlier row of the same tree ({trees}): {cells}; the first value is used.',
    remedy: 'Keep one value per tree, or give the second tree an id of its own.'
  },
  'parent-unknown': {
    message: '{count} limbs name a parent that their tree does not list ({texts}): {cells}.',
    remedy: 'Correct the ids of the parents, or clear them where the limb grows from the trunk.'
  },
  'parent-loop': {
    message: '{count} limbs are, through their parents, their own parents: {cells}.',
    remedy: 'Correct the parents so that each chain ends at the trunk.'
  },
  'parent-dead': {
    message:
      '{count} limbs are live and grow on limbs that are dead ({texts}): {cells}. They would go with those limbs.',
    remedy:
      'Where only the end of such a limb is dead, list it as broken with the break height; otherwise correct which of them lives.'
  },
  'missing-value': {
    message:
      '{count} cells of {columns} are blank: {cells}. The limbs in those rows cannot be planned without a value.',
    remedy: 'Measure them and type what was measured in those cells.'
  },
  'needed-column': null,
  'assumed-column': null,
  'crown-base-asked': null,
  'clearance-aside': null,
  'crown-asked': null,
  'no-crown-base-column': null,
  'missing-tree-value': {
    message: '{count} trees have no {column} ({cells}), and their limbs cannot be judged without it.',
    remedy: 'Type it in any row of each tree.',
    by: ['column']
  },
  'assumed-value': {
    message: '{count} trees have no {column} ({cells}); they were planned as {value}.',
    remedy: 'Type it in those cells where that is not right.',
    by: ['column', 'value']
  },
  'crown-base-assumed': {
    message:
      '{count} trees have no crown base height ({cells}); the lowest foliage or origin among the limbs of each was taken.',
    remedy: 'Measure the height of the lowest live foliage of each and type it in those cells.'
  },
  'tip-below-origin': {
    message: '{count} limbs have their tip ({cells}) below its origin; they are treated as drooping limbs.',
    remedy: 'Nothing to do where they droop; otherwise check whether the two heights were swapped.'
  },
  'foliage-above-tip': {
    message: '{count} cells of {columns} are above the tip of their limb ({cells}); they were left out.',
    remedy: 'Check them against the tip heights, and their units.'
  },
  'outside-limb': {
    message:
      '{count} cells of {columns} are not between the origin and the tip of their limb ({cells}); they were left out.',
    remedy: 'Check them against the two heights, and their units.'
  },
  'clearance-all-sides': {
    message: '{count} trees need a clearance and no side is given ({cells}): it holds on all sides.',
    remedy: 'Nothing to do if it does; otherwise give the sides, compass points such as NE.'
  },
  'tip-above-tree': {
    message: '{count} limbs have their tip above the tree’s height: {cells}.',
    remedy: 'Measure the heights of those trees again: a tree reaches to its highest tip.'
  },
  'origin-above-tree': {
    message: '{count} limbs start above the height of their tree: {cells}.',
    remedy: 'Check the origin heights and their unit.'
  },
  'crown-base-above-top': {
    message: '{count} trees have a crown base that is not below their height: {cells}.',
    remedy: 'Check both heights and their units.'
  },
  'thicker-than-stem': {
    message:
      '{count} limbs are thicker than the stem above their union: {cells}. They have overtaken the leader of their tree.',
    remedy: 'Confirm on site which stem is the leader of each tree.'
  },
  'union-impossible': {
    message:
      '{count} limbs were measured against the stem below the union, and the limbs there are together as thick as that stem or thicker: {cells}.',
    remedy: 'Measure the stem just above each union, or check the two diameters.'
  },
  'leader-twice': {
    message:
      '{count} rows are marked as leader in a tree that has one already ({trees}): {cells}. The first is kept, and these are treated as limbs.',
    remedy: 'Mark one leader per tree.'
  },
  'leader-assumed': {
    message: '{count} trees have no row marked as leader ({cells}); taken for them: {value}.',
    remedy: 'Confirm on site, or mark the leaders in the role column.'
  },
  'leader-unknown': {
    message:
      '{count} trees have no row marked as leader, and no stem diameter to tell it by ({cells}); the likeliest limb of each stands first: {names}.',
    remedy: 'Decide on site, and type leader in the role column of the stem that is kept.'
  },
  'stem-beside-leader': {
    message:
      '{count} limbs have no stem diameter ({cells}); the proposed leader beside each was taken for it.',
    remedy: 'Measure the stems just above the unions if others carry on.'
  },
  'leader-lost': {
    message:
      'The leaders of {count} trees are {what} ({cells}); what is proposed in their place stands with each tree.',
    remedy: 'Decide on site which stem takes over in each tree, and mark it as leader.'
  },
  'many-leaders': {
    message:
      '{count} trees have many limbs that compete with the leader ({cells}): half of them are cut at the first visit and the rest at the second.',
    remedy: 'Nothing to do; two stages are the rule where more than three stems compete.'
  },
  'stems-combined': {
    message:
      '{count} cells of {columns} give several stems: {cells}. They count as one each, the square root of the sum of their squares.',
    remedy: 'Nothing to do, unless your local rule combines stems in another way.'
  },
  'all-temporary': {
    message:
      '{count} trees have a trunk under {limit} ({cells}): while it is, every limb on it will be removed in time.',
    remedy: 'Keep low limbs short rather than removing them early, and choose permanent limbs later.'
  },
  'scaffold-spacing': {
    message:
      '{count} pairs of limbs of a tree start too near each other on the same side ({cells}); permanent limbs need {limit}.',
    remedy: 'Keep the better one of each pair as permanent and the other short, or removed in time.'
  },
  'permanent-close': {
    message:
      '{count} pairs of limbs marked permanent start too near each other, or one above the other on one side ({cells}); permanent limbs of these trees need {limit}.',
    remedy: 'Nothing to do if they are to stay; otherwise mark one of each pair as not permanent.'
  },
  'permanent-low': {
    message:
      '{count} limbs marked permanent start below the lowest permanent limb of their tree, at {limit} ({cells}).',
    remedy: 'Nothing to do if they are to stay; otherwise mark them as not permanent.'
  },
  'permanent-lost': {
    message:
      '{count} limbs marked permanent are dead or broken ({cells}); they are cut as such all the same.',
    remedy: 'Check the cells, and choose other limbs as permanent.'
  },
  'permanent-temporary': {
    message:
      '{count} limbs are marked permanent ({cells}), and their role is temporary; they count as permanent.',
    remedy: 'Clear one of the two cells of each.'
  },
  'scaffold-missing': {
    message: '{count} trees have no permanent limbs chosen ({cells}): that needs, by tree, {value}.',
    remedy: 'Add it to choose permanent limbs; nothing is claimed without it.'
  },
  'limbs-thicker': null,
  'heights-swapped': null,
  'sizes-unlikely': null,
  'tips-unlikely': null,
  'tree-unit': {
    message:
      '{count} trees have a {what} that goes ill with their other size and would be like the others in {unit}: {cells}. Were they typed in {unit}? They are used as they stand.',
    remedy: 'Check each; if it is in {unit}, type it with its unit.',
    by: ['what', 'unit']
  },
  'tree-shape': {
    message:
      '{count} trees have a height ({cells}) that goes ill with their trunk diameter; the first is {value1} times as high as thick. Are both right? They are used as they stand.',
    remedy: 'Check the heights, the trunk diameters and their units.'
  },
  'thicker-than-trunk': {
    message:
      '{count} limbs have a diameter, or a stem at their union, far thicker than the trunk of their tree ({cells}). Are the numbers and their units right? They are used as they stand.',
    remedy: 'Check the diameters and their units: limbs and trunks may be in different ones.'
  },
  'row-shifted': {
    message:
      '{count} rows hold more cells than there are headers, so that their values stand under the wrong ones; they were not read ({cells}).',
    remedy: 'Put values that hold a comma in quotation marks, or add the headers that are missing.'
  },
  'leader-by-name': null,
  'crown-base-above-limbs': {
    message:
      '{count} trees have a crown base above the origin of every live limb that is listed: {cells}. Is that right? They are used as they stand.',
    remedy: 'Check the crown base heights: each is the height of the lowest live foliage.'
  },
  'limbs-alike': {
    message:
      '{count} pairs of limbs of a tree have the same measurements throughout ({cells}). Was one limb of each entered twice? Both are planned.',
    remedy: 'Remove one row of each pair where it was.'
  },
  'rule-value': {
    message:
      '{count} rules could not be read as a number ({rules}): {cells}. They read {texts}; their defaults are used.',
    remedy: 'Type a number in the range of each rule, or clear the cells to use the defaults.'
  },
  'rule-unit': {
    message:
      '{count} rules have no unit of length where one belongs ({rules}): {cells}. They read {texts}; their defaults are used.',
    remedy: 'Type mm, cm, m, in or ft in those cells, or clear them for mm.'
  },
  'rule-two-ways': {
    message:
      '{count} rules can each be two numbers ({rules}): {cells}. They read {texts}, and no other number on the sheet shows whether the {sign} stands before decimals or parts thousands; their defaults are used.',
    remedy: twoReadings
  },
  'rule-not-finite': {
    message:
      '{count} rules hold results of formulas that are not finite numbers ({rules}): {cells}; their defaults are used.',
    remedy: 'Correct the formulas in those cells, or clear the cells to use the defaults.'
  },
  'rule-date': {
    message: '{count} rules hold dates and not numbers ({rules}): {cells}; their defaults are used.',
    remedy:
      'Set the format of those cells to a number and type the values; spreadsheets turn entries such as 2-3 into dates.'
  },
  'rule-range': {
    message: '{count} rules are outside their range ({rules}): {cells}; their defaults are used.',
    remedy: 'Type a number in the range of each rule, or clear the cells to use the defaults.'
  },
  'rule-not-whole': {
    message: '{count} rules are not whole numbers ({rules}): {cells}; their defaults are used.',
    remedy: 'Type a whole number in the range of each rule, or clear the cells to use the defaults.'
  },
  'rule-reason': {
    message: '{count} rules are raised without a written reason ({rules}): {cells}; their defaults are used.',
    remedy: 'Write the reason in the row of each, under “Reason for a change”, or go back to the defaults.'
  },
  'rule-order': {
    message:
      '{count} rules are more than the rule that bounds them ({rules}): {cells}; the defaults of both are used in each case.',
    remedy: 'Lower the rules named, or raise those that bound them.'
  },
  'rule-weights': null,
  'rule-weights-none': null,
  'rule-unknown': {
    message: '{count} rows name no rule ({texts}): {cells}; they are left as they are.',
    remedy: 'Nothing to do, or correct the names of the rules.'
  },
  'rule-twice': {
    message: '{count} rows give a rule again ({rules}): {cells}; the first row of each is used.',
    remedy: 'Remove one of each two rows.'
  },
  'rules-unreadable': null,
  'users-sheet-exists': null,
  'timing-answer': {
    message:
      '{count} answers on the season could not be read: {cells}. They read {texts} and count as not answered.',
    remedy: 'Type what each question asks for, or clear the cells.'
  },
  'region-unknown': null,
  'region-not-listed': null,
  'closed-window': null,
  'observed-share-too-large': {
    message: 'The observed foliage shares of {count} trees add up to more than the whole tree ({cells}).',
    remedy: 'Check the observed shares.'
  },
  'crown-ratio-low': {
    message: '{count} trees have a live-crown ratio below the goal of {limit} before any cut ({cells}).',
    remedy: 'Nothing may be raised; the plan keeps the crown base of each where it is.'
  },
  'lower-foliage-low': {
    message:
      '{count} trees carry less than half of their foliage in the lower two-thirds of their crown before any cut ({cells}).',
    remedy: 'The plan does not lower it further. Keep inner and lower foliage.'
  },
  'clearance-held': {
    message:
      '{count} trees are not clear to the height asked for after the first visit ({cells}): {why}; the plan of each says when.',
    remedy: 'Raise in stages at later visits; limbs that hang lower are marked in the plan.',
    by: ['why']
  },
  palm: {
    message:
      '{count} trees are palms ({cells}). Palms are outside the standards for shade trees that are used here, so no cut is planned.',
    remedy: 'Have them pruned by the standard for palms, or correct the species or the form.'
  },
  'multi-stem-proposed': {
    message:
      '{count} trees have three or more unmarked stems that rise from the ground ({cells}): they are planned as multi-stem trees, and no stem is shortened for another.',
    remedy: 'If one stem should lead, mark it as leader; otherwise type multi-stem as the form of the tree.'
  },
  'dieback-counts': {
    message: '{count} trees have so much dieback that their vigor counts as {text} ({cells}).',
    remedy: 'Find the cause first; look again next season.',
    by: ['text']
  },
  'pruned-recently': {
    message:
      '{count} trees were pruned within a year, and how much came off is not given ({cells}): nothing live is cut on them this season.',
    remedy: 'Type the foliage removed this season as a share, 0 if none.'
  },
  'inspect-first': {
    message: '{count} limbs have decay or a crack noted ({cells}): no live cut is planned on them.',
    remedy: 'Inspect the limbs and their unions first; the arborist decides.'
  },
  'leader-decayed': {
    message:
      'The leaders of {count} trees have decay or a crack noted ({cells}): cuts for structure wait for the choice of the leader.',
    remedy: 'Inspect them, and decide on site which stem is the leader.'
  },
  'leader-close': {
    message:
      'Which of two stems leads is too close to call on {count} trees ({trees}): {cells}. Cuts for structure wait there for the choice of the leader.',
    remedy: 'Decide on site, and type leader in the role column of the stem that is kept.'
  },
  'foliage-below-base': {
    message: '{count} limbs have foliage below the crown base of their tree ({cells}).',
    remedy: 'Check the crown base heights and the lowest foliage of the limbs.'
  },
  'poor-vigor': {
    message:
      '{count} trees are in poor vigor ({cells}): no live wood is to be taken from them. Dead wood is still listed.',
    remedy: 'Find and treat the cause first; look again next season.'
  },
  'nothing-allowed': {
    message:
      '{count} trees have no live foliage to spare this season ({cells}); the plan of each says how that comes about.',
    remedy: 'Return when they can spare foliage again.'
  },
  'no-limbs': {
    message: '{count} trees have no limbs listed ({cells}); {given}, but no cuts.',
    remedy: 'Measure their competing limbs to get a cut plan.',
    by: ['given']
  },
  'answers-unread': null,
  'answers-not-kept': null,
  'hidden-rows': null,
  'range-changed': null,
  'sheet-protected': null,
  'cell-editing': null,
  'not-cells': null,
  'address-gone': null,
  'rate-not-a-number': {
    message:
      '{count} rates could not be read as a number ({names}): {cells}. They read {texts}; their start values are used.',
    remedy: 'Type the number alone in each of those cells, in the unit beside it.'
  },
  'rate-two-ways': {
    message:
      '{count} rates can each be two numbers ({names}): {cells}. They read {texts}, and no other number on the sheet shows whether the {sign} stands before decimals or parts thousands; their start values are used.',
    remedy: twoReadings
  },
  'rate-not-finite': {
    message:
      '{count} rates hold results of formulas that are not finite numbers ({names}): {cells}; their start values are used.',
    remedy: 'Correct the formulas in those cells, or type the numbers alone.'
  },
  'rate-date': {
    message: '{count} rates hold dates and not numbers ({names}): {cells}; their start values are used.',
    remedy:
      'Set the format of those cells to a number and type the rates; spreadsheets turn entries such as 2-3 into dates.'
  },
  'rate-out-of-range': {
    message: '{count} rates are outside their range ({names}): {cells}; their start values are used.',
    remedy: 'Type values in the range: {range}.',
    by: ['range']
  },
  'rate-not-a-choice': {
    message:
      '{count} rates could not be read ({names}): {cells}. They read {texts}, which is not {choices}; their start values are used.',
    remedy: 'Type {choices} in each of those cells.',
    by: ['choices']
  },
  'rate-margin-whole': null,
  'rate-order': {
    message:
      '{count} limits are not above the ones before them ({names}): {cells}; the start values are used.',
    remedy: 'Give the limits in rising order.'
  },
  'rate-decimals': null,
  'rate-changed-twice': {
    message:
      '{count} rates were changed on the Estimate, and since then on the Rates sheet too ({names}): {cells}; those of the Rates sheet are used.',
    remedy: 'Type the values that hold into the Rates sheet, then write the Estimate again.'
  },
  'rate-missing': {
    message: 'The rates at {cells} give no value for {count} of them ({names}); their start values are used.',
    remedy:
      'Type each in the value column of its row; if a row is gone, add it again under the name of the rate.'
  },
  'rate-twice': {
    message: '{count} rows give a rate again ({names}): {cells}; the first of each is used.',
    remedy: 'Remove one of each two rows.'
  },
  'rate-unknown': {
    message:
      '{count} rows are no rates that the estimate knows ({texts}): {cells}; they are left as they are.',
    remedy: 'Nothing to do, or give a row the name of a rate if it should be used.'
  },
  'rate-unit': {
    message:
      'The units of {count} rates ({names}) could not be read: {cells}. They read {texts} and are read as {value}.',
    remedy: 'Type the units in those cells as they are read, and the rates in those units.'
  },
  'no-rates': null,
  'users-sheet': null,
  'detail-unusable': {
    message:
      '{count} job details could not be used ({names}): {cells}. They read {texts}, and are left out as if they were blank.',
    remedy: 'Type {wanted} in each of those cells, or clear them.',
    by: ['wanted']
  },
  'detail-twice': {
    message: '{count} rows give a job detail again ({names}): {cells}; the first of each is used.',
    remedy: 'Remove one of each two rows.'
  },
  'detail-unknown': {
    message:
      '{count} rows are no job details that the documents know ({texts}): {cells}; they are left as they are.',
    remedy: 'Nothing to do, or give a row the name of a detail if it should be printed.'
  },
  'no-details': null,
  'details-several': null,
  'details-nowhere': null,
  'logo-unusable': null,
  'logo-several': null,
  'photo-unusable': {
    message:
      'Of {count} photographs each {why} ({texts}; {cells}); the pages of their trees in the report have none.',
    remedy:
      'Put PNG or JPEG of at most 15 MB and 10,000 pixels on a side into a row of each tree, or beside the inventory under the names that the inventory gives them.',
    by: ['why']
  },
  'photo-files': null,
  'pictures-unread': null,
  'detail-year-past': null,
  'detail-prices-over': null,
  'detail-prices-early': null,
  'other-workbook': null,
  'chart-sheet': null,
  'document-changed': null,
  'drafts-left': null,
  'written-without': null,
  'spreadsheet-failed': null
}
