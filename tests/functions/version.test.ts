import { version as packaged } from '../../package.json'
import { VERSION } from '../../functions/about'

test('VERSION gives the version of package.json, whatever the spreadsheet appends', () => {
  const call = VERSION as (...given: unknown[]) => unknown[][]
  expect(call()).toEqual([[packaged]])
  expect(call({ functionName: 'VERSION' })).toEqual([[packaged]])
})
