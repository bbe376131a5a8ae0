/** What a sheet is like where nothing else is set: as in a new Excel workbook. */
export const standardFont = 'Calibri'
export const standardSize = 11

export const standardSheet = {
  defaultStyle: { ff: standardFont, fs: standardSize },
  defaultRowHeight: 20,
  defaultColumnWidth: 64
}
