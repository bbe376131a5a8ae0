/** Which looks of a workbook show a number as a percentage (ECMA-376 part 1, 18.8.30 and 18.8.45, from memory). */
import { isPercentFormat } from '../../../shared/numberFormats'
import { attributeOf, tagsOf } from './xmlText'

/** 0% and 0.00% have these numbers in every workbook. */
const builtIn = ['9', '10']

/** The numbers by which cells name these looks. */
export function percentStyles(stylesXml: string): ReadonlySet<string> {
  const formats = new Set(builtIn)
  for (const tag of tagsOf(stylesXml, 'numFmt')) {
    const id = attributeOf(tag, 'numFmtId')
    if (id !== null && isPercentFormat(attributeOf(tag, 'formatCode') ?? '')) formats.add(id)
  }
  const looks = /<(?:\w+:)?cellXfs[\s>][^]*?<\/(?:\w+:)?cellXfs>/.exec(stylesXml)?.[0] ?? ''
  const found = tagsOf(looks, 'xf').flatMap((tag, at) =>
    formats.has(attributeOf(tag, 'numFmtId') ?? '') ? [String(at)] : []
  )
  return new Set(found)
}
