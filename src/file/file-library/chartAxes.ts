/** The axes of a chart, labels along the foot and values up the side (DrawingML, ECMA-376 part 1, 21.2). */
import { chartSizes } from '../../sheets/chartMarks'
import { palette } from '../../../shared/palette'
import { element, solidFill, titleElement, valueElement, type Node } from './chartNodes'

const axes = { labels: '111111111', values: '222222222' }

export const axisIds = [valueElement('c:axId', axes.labels), valueElement('c:axId', axes.values)]

const thin = (color: string) => element('c:spPr', {}, element('a:ln', { w: 9525 }, solidFill(color)))

export function labelAxis(): Node {
  return element(
    'c:catAx',
    {},
    valueElement('c:axId', axes.labels),
    element('c:scaling', {}, valueElement('c:orientation', 'minMax')),
    valueElement('c:delete', 0),
    valueElement('c:axPos', 'b'),
    element('c:numFmt', { formatCode: 'General', sourceLinked: 1 }),
    valueElement('c:majorTickMark', 'none'),
    valueElement('c:minorTickMark', 'none'),
    valueElement('c:tickLblPos', 'nextTo'),
    thin(palette.rule),
    valueElement('c:crossAx', axes.values),
    valueElement('c:crosses', 'autoZero'),
    valueElement('c:auto', 0),
    valueElement('c:lblAlgn', 'ctr'),
    valueElement('c:lblOffset', 100),
    valueElement('c:noMultiLvlLbl', 1)
  )
}

/** From nothing up, as columns have to stand on nothing to be compared. */
export function valueAxis({ valueTitle, valueFormat }: { valueTitle: string; valueFormat: string }): Node {
  return element(
    'c:valAx',
    {},
    valueElement('c:axId', axes.values),
    element('c:scaling', {}, valueElement('c:orientation', 'minMax'), valueElement('c:min', 0)),
    valueElement('c:delete', 0),
    valueElement('c:axPos', 'l'),
    element('c:majorGridlines', {}, thin(palette.headerFill)),
    titleElement(valueTitle, chartSizes.text, false, true),
    element('c:numFmt', { formatCode: valueFormat, sourceLinked: 0 }),
    valueElement('c:majorTickMark', 'none'),
    valueElement('c:minorTickMark', 'none'),
    valueElement('c:tickLblPos', 'nextTo'),
    element('c:spPr', {}, element('a:ln', {}, element('a:noFill', {}))),
    valueElement('c:crossAx', axes.labels),
    valueElement('c:crosses', 'autoZero'),
    valueElement('c:crossBetween', 'between')
  )
}
