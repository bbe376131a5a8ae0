/**
 * What Microsoft's reference of the Excel API demands of a member, each as a request that the host refuses, so that the
 * add-in cannot rest on more than is promised.
 */
import { errorOf, startOffice, type OfficeInNode } from './officeInNode'

let office: OfficeInNode

beforeAll(async () => {
  office = await startOffice()
})

type Use = (sheet: Excel.Worksheet) => void

const demands: [member: string, demand: string, use: Use][] = [
  [
    'PageLayout.setPrintTitleRows',
    'the range spans the whole row',
    (sheet) => {
      sheet.pageLayout.setPrintTitleRows(sheet.getRange('A3'))
    }
  ],
  [
    'PageLayout.zoom',
    'a scale is from 10 to 400',
    (sheet) => {
      sheet.pageLayout.zoom = { scale: 401 }
    }
  ],
  [
    'Worksheet.name',
    'a name has at most 31 characters',
    (sheet) => {
      sheet.name = 'x'.repeat(32)
    }
  ],
  [
    'Worksheet.name',
    'a name holds no slash',
    (sheet) => {
      sheet.name = 'Cut/plan'
    }
  ],
  [
    'Range.values',
    'the block has the shape of the range',
    (sheet) => {
      sheet.getRange('A1:B2').values = [[1]]
    }
  ],
  [
    'ConditionalFormatRule.formula',
    'a formula begins with a sign of equality',
    (sheet) => {
      sheet.getRange('A1').conditionalFormats.add('Custom').custom.rule.formula = 'A1=1'
    }
  ],
  [
    'ShapeCollection.addImage',
    'a picture is a PNG or JPEG in base64',
    (sheet) => {
      sheet.shapes.addImage('not a picture')
    }
  ]
]

test.each(demands)('%s: %s', async (_member, _demand, use) => {
  const error = await errorOf(
    Excel.run(async (context) => {
      use(context.workbook.worksheets.getItem('Trees'))
      await context.sync()
    })
  )
  expect(error?.code).toBe('InvalidArgument')
})

test('Range.getMergedAreasOrNullObject: a range has at most 512 merged areas', async () => {
  const id = office.book.activeSheet()
  for (let row = 0; row < 513; row++) office.book.mergeCells(id, { row, column: 5, rows: 1, columns: 2 })
  const error = await errorOf(
    Excel.run(async (context) => {
      const merged = context.workbook.worksheets.getItem('Trees').getRange('A1:H600')
      merged.getMergedAreasOrNullObject().load('address')
      await context.sync()
    })
  )
  expect(error?.code).toBe('InvalidOperation')
})
