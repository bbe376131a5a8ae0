import type { RealInventory } from '../expected'
import { baseDiameterAsked } from './baseDiameterAsked'
import { brokenHeaderLines } from './brokenHeaderLines'
import { cachedFormulas } from './cachedFormulas'
import { camelCaseMetric } from './camelCaseMetric'
import { carriageReturns } from './carriageReturns'
import { centimetersInCells } from './centimetersInCells'
import { chosenSheet } from './chosenSheet'
import { consultantAppendix } from './consultantAppendix'
import { coverAndLookups } from './coverAndLookups'
import { crownBaseAboveLimbs } from './crownBaseAboveLimbs'
import { dateInDiameter } from './dateInDiameter'
import { datesInManyWritings } from './datesInManyWritings'
import { deadInWords } from './deadInWords'
import { diametersWithoutUnit } from './diametersWithoutUnit'
import { dittoMarks } from './dittoMarks'
import { duplicateRows } from './duplicateRows'
import { estimatesAndRanges } from './estimatesAndRanges'
import { firstRowOnly } from './firstRowOnly'
import { formAboveTable } from './formAboveTable'
import { formsStacked } from './formsStacked'
import { fractions } from './fractions'
import { frenchGirths } from './frenchGirths'
import { frenchLetters } from './frenchLetters'
import { frenchTabsUtf16 } from './frenchTabsUtf16'
import { frenchTwoSheets } from './frenchTwoSheets'
import { germanStreetTrees } from './germanStreetTrees'
import { germanTitledSemicolons } from './germanTitledSemicolons'
import { germanWithUmlautsSpelledOut } from './germanWithUmlautsSpelledOut'
import { headerAcrossTwoColumns } from './headerAcrossTwoColumns'
import { headerFarBelow } from './headerFarBelow'
import { headersOnEveryPage } from './headersOnEveryPage'
import { hiddenRows } from './hiddenRows'
import { idsWithCaseAndInvisibles } from './idsWithCaseAndInvisibles'
import { kindUnderTree } from './kindUnderTree'
import { leaderRows } from './leaderRows'
import { legendBeside } from './legendBeside'
import { lettersForClasses } from './lettersForClasses'
import { limbGirthStemDiameter } from './limbGirthStemDiameter'
import { limbRowsAboveUnion } from './limbRowsAboveUnion'
import { limbsWithoutIds } from './limbsWithoutIds'
import { metersUnderFeet } from './metersUnderFeet'
import { missingCodes } from './missingCodes'
import { mixedMetricUnits } from './mixedMetricUnits'
import { municipalList } from './municipalList'
import { namesRepeated } from './namesRepeated'
import { notesBelow } from './notesBelow'
import { nothingToRead } from './nothingToRead'
import { numberedChoices } from './numberedChoices'
import { numberedGroups } from './numberedGroups'
import { numbersByStreet } from './numbersByStreet'
import { nurseryStock } from './nurseryStock'
import { oneHeightMistyped } from './oneHeightMistyped'
import { paddedIds } from './paddedIds'
import { parentTrunk } from './parentTrunk'
import { percentFormats } from './percentFormats'
import { quotedThroughout } from './quotedThroughout'
import { readsAcross } from './readsAcross'
import { separatorLine } from './separatorLine'
import { severalStems } from './severalStems'
import { sheetATree } from './sheetATree'
import { sheetAZone } from './sheetAZone'
import { smallPercents } from './smallPercents'
import { sortedByDiameter } from './sortedByDiameter'
import { spanishBars } from './spanishBars'
import { spanishNurserySample } from './spanishNurserySample'
import { spanishZonesSameNumbers } from './spanishZonesSameNumbers'
import { stackedTables } from './stackedTables'
import { stemAnswered } from './stemAnswered'
import { stemBelowUnion } from './stemBelowUnion'
import { streetDecoys } from './streetDecoys'
import { studentThesis } from './studentThesis'
import { stumpsAmongLimbs } from './stumpsAmongLimbs'
import { suffixedGroups } from './suffixedGroups'
import { surveyAppSnakeCase } from './surveyAppSnakeCase'
import { swappedHeights } from './swappedHeights'
import { tablesSideBySide } from './tablesSideBySide'
import { tableWithTotals } from './tableWithTotals'
import { tapeReadings } from './tapeReadings'
import { thickerThanStem } from './thickerThanStem'
import { thousandLimbsOneQuestion } from './thousandLimbsOneQuestion'
import { thousandLimbsSeveralFaults } from './thousandLimbsSeveralFaults'
import { thousandsInMillimeters } from './thousandsInMillimeters'
import { threeHeaderRows } from './threeHeaderRows'
import { threeHundredColumns } from './threeHundredColumns'
import { ticksForBark } from './ticksForBark'
import { tipAboveTree } from './tipAboveTree'
import { titledGroups } from './titledGroups'
import { totalsAndAverages } from './totalsAndAverages'
import { totalWithoutWord } from './totalWithoutWord'
import { treesOnlyOneMissing } from './treesOnlyOneMissing'
import { treesWithHiddenColumns } from './treesWithHiddenColumns'
import { twoReadings } from './twoReadings'
import { twoSheetsJoined } from './twoSheetsJoined'
import { twoStemCandidates } from './twoStemCandidates'
import { unitsNowhere } from './unitsNowhere'
import { unitsRow } from './unitsRow'
import { verticalMerges } from './verticalMerges'
import { wideExport } from './wideExport'

/**
 * Inventories in the shapes that people keep them in. All of them are invented by us for these checks: places, trees and
 * measurements are made up, and no file was copied from anywhere. Each is another shape:
 *
 * 1. limbRowsAboveUnion: limbs as rows, tree columns repeated, the stem “above union”, inches and feet
 * 2. germanTitledSemicolons: German .csv with title lines above, semicolons, decimal commas, Windows-1252
 * 3. frenchTabsUtf16: French .csv with tabs and decimal commas, UTF-16 little-endian
 * 4. spanishBars: Spanish text with bars between, UTF-8 with its mark, accents left out in some headers
 * 5. surveyAppSnakeCase: export of a survey app: snake_case, a row number of its own, coordinates, inspector, photo
 * 6. camelCaseMetric: camelCase headers with the unit as the last word, millimeters and meters
 * 7. brokenHeaderLines: headers broken over lines inside quotes, notes with commas and line breaks
 * 8. firstRowOnly: tree columns on the first row only, most trees with one or two limbs
 * 9. totalsAndAverages: subtotals, an average and a total among the rows, a tax line and a line to sign below
 * 10. headersOnEveryPage: the header row repeated on every printed page, with a blank row before it
 * 11. notesBelow: notes, a legend and who surveyed below the rows, all in the first column
 * 12. numbersByStreet: tree numbers that start again in every street
 * 13. kindUnderTree: the column “Tree” holds the kind, “No.” the number; two trees of one kind
 * 14. idsWithCaseAndInvisibles: one id in several writings: case, a zero-width space, a no-break space, stray spaces
 * 15. parentTrunk: every limb names its parent: “trunk”, “Main stem”, or a limb in another case
 * 16. ticksForBark: ticks for included bark, dead and rubbing: x, ✓, a blank for no
 * 17. lettersForClasses: single letters for classes: condition G, F, P and age Y, SM, M
 * 18. numberedChoices: choices with numbers before the words: “1 - good”, “2 - fair”, “semi mature” without a hyphen
 * 19. tapeReadings: lengths as a tape is read, units in the cells: 3½", 4'-6", 12 in., Ø 4.5, feet and inches
 * 20. thousandsInMillimeters: millimeters throughout, thousands by point or by space, decimals by comma
 * 21. estimatesAndRanges: estimated and ranged values among measured ones: “12 est.”, “~14”, “20-25”
 * 22. frenchGirths: girths instead of diameters for trunk, limb and stem, French, centimeters
 * 23. limbGirthStemDiameter: the limb by girth, the stem by diameter, in one table
 * 24. germanStreetTrees: German municipal list of trees alone, trunk by girth, planting year, state of the work
 * 25. severalStems: a list of trees with several stems in one cell, and how many
 * 26. dateInDiameter: a diameter that the spreadsheet turned into a date
 * 27. swappedHeights: the headers of origin and tip stand over each other’s column
 * 28. metersUnderFeet: heights in meters under headers that say feet
 * 29. thickerThanStem: limb and stem diameters under each other’s header: every limb thicker than its stem
 * 30. tipAboveTree: one limb reaches above its tree, another starts above it
 * 31. crownBaseAboveLimbs: a crown base above the union of every limb listed, and a height far outside the usual for its trunk
 * 32. numberedGroups: one row per tree, limbs in numbered column groups: Limb 1 …, Limb 2 …, Limb 3 …
 * 33. suffixedGroups: numbered groups with the number at the end: limb_dia_1, stem_dia_1 …, all diameters first
 * 34. titledGroups: two header rows: merged titles “Limb A”, “Limb B” over the names of their columns
 * 35. namesRepeated: the same names again for a second limb in the row, told apart by position only
 * 36. threeHeaderRows: three header rows: merged titles, names, units; the same name “Height” in two groups
 * 37. unitsRow: a row of units under plain names: m and cm where others would expect feet
 * 38. twoSheetsJoined: a sheet of trees and a sheet of limbs, joined by the tree’s id
 * 39. frenchTwoSheets: French, two sheets joined by number, the limbs first in the workbook
 * 40. stackedTables: a table of trees and, below it, a table of limbs on one sheet, joined by id
 * 41. tablesSideBySide: the trees at the left, the limbs at the right of an empty column, of unequal length
 * 42. sheetAZone: a sheet a zone with the same headers, ids of their own, a price list between
 * 43. spanishZonesSameNumbers: Spanish, a sheet a zone, the numbers begin at 1 on every sheet
 * 44. formAboveTable: a form of labels and values for one tree above the table of its limbs
 * 45. formsStacked: one form with its table below another on one sheet, a tree each
 * 46. sheetATree: a sheet a tree, each with a German form and its table of limbs
 * 47. municipalList: a municipal list of trees alone, with vacant sites, a stump, and what a city keeps of its streets
 * 48. treesWithHiddenColumns: .xlsx table of trees with hidden columns, one of which holds the heights
 * 49. cachedFormulas: .xlsx of another program: texts in the cells, ids and diameters by formulas with their last results
 * 50. tableWithTotals: an Excel table with a row of totals by SUBTOTAL, and a figure below it
 * 51. hiddenRows: rows hidden by a filter
 * 52. percentFormats: shares as 0.05 under a percent format, as 5 under a plain one, and as the text “5 %”, in one column
 * 53. smallPercents: a percent column with 1 and 0.5 among larger numbers
 * 54. fractions: shares as fractions under a header without a percent sign
 * 55. verticalMerges: tree cells merged down over the rows of their limbs, two limbs a tree
 * 56. dittoMarks: ditto for the tree above: do., a pair of marks, an arrow down
 * 57. nurseryStock: a nursery’s stock list: caliper, its height, pot, price and count, no limbs and no trunk at breast height
 * 58. spanishNurserySample: Spanish nursery sample with limbs, calibre in millimeters, a comma for decimals
 * 59. studentThesis: a student’s data: short names with units, plots and treatments beside, NA for missing
 * 60. consultantAppendix: a British consultant’s appendix: tree reference, stem diameter at 1.5 m, four crown radii, no limbs
 * 61. leaderRows: the leader as a row of its own among the limbs, with a role, without a stem
 * 62. stemBelowUnion: the stem measured below the union
 * 63. twoReadings: two readings of the limb at right angles, in two columns
 * 64. separatorLine: a first line “sep=;” as spreadsheets write it, then the table
 * 65. quotedThroughout: every cell in quotes, empty columns at the right and empty rows at the end
 * 66. carriageReturns: lines ended by carriage returns alone, UTF-16 big-endian, tabs
 * 67. wideExport: sixty columns of an asset register, twelve of which are the inventory, scattered among them
 * 68. thousandLimbsOneQuestion: 1,000 limbs whose stem column, if it is one, has a name that says nothing
 * 69. thousandLimbsSeveralFaults: 1,000 limbs with four faults, each of them in hundreds of rows
 * 70. deadInWords: live and dead in words under “Limb status”, dead wood with nothing but its diameter
 * 71. missingCodes: codes for what was not measured: n/a, -, NM, -9999
 * 72. streetDecoys: a street survey full of what is near the trees: kerb, sign, wires, pavement, distances
 * 73. legendBeside: a legend in the columns to the right, with words that look like headers
 * 74. coverAndLookups: a cover sheet and a sheet of lists before the inventory, a hidden sheet with an older survey of the same trees after it
 * 75. chosenSheet: two surveys of the same trees on two sheets, the sheet named on the command line
 * 76. stumpsAmongLimbs: stumps, removed trees and empty pits as rows between the limbs
 * 77. headerFarBelow: a letterhead, contacts and remarks in the first eleven rows, the table from column C
 * 78. twoStemCandidates: two columns that may both be the stem at the union: a question, not a plan
 * 79. stemAnswered: the same two candidates, answered on the command line
 * 80. baseDiameterAsked: “Base diameter” may be the limb’s or the trunk’s; it differs from limb to limb, so it is taken for the limb’s and asked
 * 81. paddedIds: ids as numbers on one sheet and padded with zeros on the other
 * 82. mixedMetricUnits: four units in one table, each said in its header: trunk cm, limb mm, tree m, limb heights ft
 * 83. unitsNowhere: no unit anywhere; the sizes only make sense in centimeters and meters
 * 84. duplicateRows: the same limb twice, once with another diameter; a limb without a tree at the top
 * 85. readsAcross: headers in an unusual order, the limb before the tree, the id last
 * 86. germanWithUmlautsSpelledOut: German headers in ASCII with underscores, ja and nein, semicolons with decimal points
 * 87. treesOnlyOneMissing: a list of trees with limbs for some only, one row per tree where there are none
 * 88. nothingToRead: a price list and nothing else: no inventory at all
 * 89. totalWithoutWord: sums in a row without a word for it: a blank id, no limb, numbers that add up
 * 90. oneHeightMistyped: one tree whose height differs in one of its rows: still one tree, and said
 * 91. sortedByDiameter: rows sorted by limb diameter, so that the rows of one tree lie apart
 * 92. limbsWithoutIds: limbs as rows without any name or number of their own
 * 93. centimetersInCells: a column of inches in which half the cells say “cm” themselves
 * 94. frenchLetters: French letters for yes and no, O and N, and for living or dead wood V and M
 * 95. threeHundredColumns: three hundred columns, most of them numbered readings of an instrument
 * 96. datesInManyWritings: the last pruning as a day, a year, a month in words; planting and inspection dates beside it
 * 97. headerAcrossTwoColumns: a header merged over two columns for two readings, others merged down over the row of sub-headers
 * 98. diametersWithoutUnit: diameters without a unit beside heights in feet: taken as inches, and said
 */
export const inventories: readonly RealInventory[] = [
  limbRowsAboveUnion,
  germanTitledSemicolons,
  frenchTabsUtf16,
  spanishBars,
  surveyAppSnakeCase,
  camelCaseMetric,
  brokenHeaderLines,
  firstRowOnly,
  totalsAndAverages,
  headersOnEveryPage,
  notesBelow,
  numbersByStreet,
  kindUnderTree,
  idsWithCaseAndInvisibles,
  parentTrunk,
  ticksForBark,
  lettersForClasses,
  numberedChoices,
  tapeReadings,
  thousandsInMillimeters,
  estimatesAndRanges,
  frenchGirths,
  limbGirthStemDiameter,
  germanStreetTrees,
  severalStems,
  dateInDiameter,
  swappedHeights,
  metersUnderFeet,
  thickerThanStem,
  tipAboveTree,
  crownBaseAboveLimbs,
  numberedGroups,
  suffixedGroups,
  titledGroups,
  namesRepeated,
  threeHeaderRows,
  unitsRow,
  twoSheetsJoined,
  frenchTwoSheets,
  stackedTables,
  tablesSideBySide,
  sheetAZone,
  spanishZonesSameNumbers,
  formAboveTable,
  formsStacked,
  sheetATree,
  municipalList,
  treesWithHiddenColumns,
  cachedFormulas,
  tableWithTotals,
  hiddenRows,
  percentFormats,
  smallPercents,
  fractions,
  verticalMerges,
  dittoMarks,
  nurseryStock,
  spanishNurserySample,
  studentThesis,
  consultantAppendix,
  leaderRows,
  stemBelowUnion,
  twoReadings,
  separatorLine,
  quotedThroughout,
  carriageReturns,
  wideExport,
  thousandLimbsOneQuestion,
  thousandLimbsSeveralFaults,
  deadInWords,
  missingCodes,
  streetDecoys,
  legendBeside,
  coverAndLookups,
  chosenSheet,
  stumpsAmongLimbs,
  headerFarBelow,
  twoStemCandidates,
  stemAnswered,
  baseDiameterAsked,
  paddedIds,
  mixedMetricUnits,
  unitsNowhere,
  duplicateRows,
  readsAcross,
  germanWithUmlautsSpelledOut,
  treesOnlyOneMissing,
  nothingToRead,
  totalWithoutWord,
  oneHeightMistyped,
  sortedByDiameter,
  limbsWithoutIds,
  centimetersInCells,
  frenchLetters,
  threeHundredColumns,
  datesInManyWritings,
  headerAcrossTwoColumns,
  diametersWithoutUnit
]
