/** What a survey says does not depend on how its file of separated values is written. */
import fc from 'fast-check'
import { decodeText, readCsv } from '../../../src/file/csvFile'
import { readSheets } from '../../../src/inventory/readSheets'
import { changes, decoysOf, shapeOf } from './changes'
import { askedOf, differentTrees, lostRows } from './compared'
import { surveys } from './drawnSurvey'
import { runs } from './runs'
import { plainShape, sheetsOf } from './shape'
import { fileBytes, writings } from './written'

test('any separator, encoding, line end and decimal sign gives the same trees', () => {
  fc.assert(
    fc.property(surveys(), changes, writings, (survey, made, writing) => {
      const [sheet, ...others] = shapeOf(survey, made)
      fc.pre(others.length === 0)
      const rows = readCsv(decodeText(fileBytes(sheet!, writing)))
      const got = readSheets([{ name: sheet!.name, rows, top: 0, left: 0 }])
      const wanted = readSheets(sheetsOf(plainShape(survey)))
      const asked = askedOf(got, decoysOf(survey, made))
      expect(differentTrees(got.trees, wanted.trees, asked)).toEqual([])
      expect(lostRows([sheet!], got)).toEqual([])
    }),
    runs(150, 30_000)
  )
})
