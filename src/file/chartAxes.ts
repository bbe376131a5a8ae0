/** The axes of a chart, labels along the foot and values up the side (DrawingML, ECMA-376 part 1, 21.2). */
import { chartSizes } from '../sheets/chartMarks'
import { palette } from '../../shared/palette'
import { node, solid, title, value, type Node } from './chartNodes'

const axes = { labels: '111111111', values: '222222222' }

export const axisIds = [value('c:axId', axes.labels), value('c:axId', axes.values)]

const thin = (color: string) => node('c:spPr', {}, node('a:ln', { w: 9525 }, solid(color)))

export function labelAxis(): Node {
  return node(
    'c:catAx',
    {},
    value('c:axId', axes.labels),
    node('c:scaling', {}, value('c:orientation', 'minMax')),
    value('c:delete', 0),
    value('c:axPos', 'b'),
    node('c:numFmt', { formatCode: 'General', sourceLinked: 1 }),
    value('c:majorTickMark', 'none'),
    value('c:minorTickMark', 'none'),
    value('c:tickLblPos', 'nextTo'),
    thin(palette.rule),
    value('c:crossAx', axes.values),
    value('c:crosses', 'autoZero'),
    value('c:auto', 0),
    value('c:lblAlgn', 'ctr'),
    value('c:lblOffset', 100),
    value('c:noMultiLvlLbl', 1)
  )
}

/** From nothing up, as columns have to stand on nothing to be compared. */
export function valueAxis({ valueTitle, valueFormat }: { valueTitle: string; valueFormat: string }): Node {
  return node(
    'c:valAx',
    {},
    value('c:axId', axes.values),
    node('c:scaling', {}, value('c:orientation', 'minMax'), value('c:min', 0)),
    value('c:delete', 0),
    value('c:axPos', 'l'),
    node('c:majorGridlines', {}, thin(palette.headerFill)),
    title(valueTitle, chartSizes.text, false, true),
    node('c:numFmt', { formatCode: valueFormat, sourceLinked: 0 }),
    value('c:majorTickMark', 'none'),
    value('c:minorTickMark', 'none'),
    value('c:tickLblPos', 'nextTo'),
    node('c:spPr', {}, node('a:ln', {}, node('a:noFill', {}))),
    value('c:crossAx', axes.labels),
    value('c:crosses', 'autoZero'),
    value('c:crossBetween', 'between')
  )
}
