/** ShapeCollection and Shape of the Excel API, for pictures only. */
import type { Picture } from '../book'
import { booleanValue, numberValue, oneOf, textArgument, textValue } from './memberArguments'
import { invalidArgument, itemNotFound } from './faults'
import { hostType, type HostObject } from './hostObject'
import { writable, type SheetTarget } from './session'

interface ShapeTarget extends SheetTarget {
  id: string
}

/** The first bytes of a PNG file in base64 (W3C PNG, section 5.2: 137 80 78 71 13 10 26 10; from memory). */
const pngStart = 'iVBORw0KGgo'

function picture({ session, sheetId, id }: ShapeTarget): Picture {
  const known = session.book.pictures(sheetId).find((other) => other.id === id)
  if (!known) throw itemNotFound('picture of that id')
  return known
}

function change(target: ShapeTarget, to: Partial<Picture>): void {
  picture(target)
  writable(target.session, target.sheetId).changePicture(target.id, to)
}

function move(side: 'left' | 'top') {
  return (target: ShapeTarget, to: unknown) => {
    change(target, { [side]: numberValue(to, `The ${side} of the picture`) })
  }
}

/** A new picture keeps its proportion, so that setting the width and then the height is not what it seems. */
const lockedOf = (target: ShapeTarget): boolean => picture(target).proportionLocked ?? true

function resize(side: 'width' | 'height') {
  return (target: ShapeTarget, to: unknown) => {
    const size = numberValue(to, `The ${side} of the picture`)
    const { width, height } = picture(target)
    const other = side === 'width' ? { height: (height * size) / width } : { width: (width * size) / height }
    change(target, { [side]: size, ...(lockedOf(target) ? other : {}) })
  }
}

const placements = ['TwoCell', 'OneCell', 'Absolute'] as const

const shapeObject = hostType<ShapeTarget>({
  name: 'Shape',
  identity: (target) => ({ Id: picture(target).id }),
  reads: {
    id: ({ id }) => id,
    type: () => 'Image',
    visible: () => true,
    left: (target) => picture(target).left,
    top: (target) => picture(target).top,
    width: (target) => picture(target).width,
    height: (target) => picture(target).height,
    altTextDescription: (target) => picture(target).alt,
    lockAspectRatio: lockedOf,
    placement: (target) => picture(target).placement ?? 'TwoCell'
  },
  writes: {
    left: move('left'),
    top: move('top'),
    width: resize('width'),
    height: resize('height'),
    lockAspectRatio: (target, to) => {
      change(target, { proportionLocked: booleanValue(to, 'Locking the proportion') })
    },
    placement: (target, to) => {
      change(target, { placement: oneOf(to, placements, 'The placement') })
    },
    altTextDescription: (target, to) => {
      change(target, { alt: textValue(to, 'The alternative text') })
    }
  },
  calls: {
    getAsImage: (target, args) => {
      const format = textArgument(args, 0, 'The format')
      if (format !== 'PNG') throw invalidArgument(`A picture is not given as ${format}.`)
      return picture(target).image
    },
    delete: (target) => {
      picture(target)
      writable(target.session, target.sheetId).deletePicture(target.id)
    }
  }
})

function item({ session, sheetId }: SheetTarget, key: unknown): HostObject {
  const known = session.book.pictures(sheetId).find(({ id }) => id === key)
  if (!known) throw itemNotFound(`picture "${String(key)}"`)
  return shapeObject({ session, sheetId, id: known.id })
}

export const shapesObject = hostType<SheetTarget>({
  name: 'ShapeCollection',
  items: ({ session, sheetId }) =>
    session.book.pictures(sheetId).map(({ id }) => shapeObject({ session, sheetId, id })),
  item,
  opens: {
    addImage: ({ session, sheetId }, args) => {
      const image = textArgument(args, 0, 'The picture')
      if (!image.startsWith(pngStart)) throw invalidArgument('The picture is not a PNG in base64.')
      const { id } = writable(session, sheetId).addPicture(sheetId, image)
      return shapeObject({ session, sheetId, id })
    }
  },
  calls: { getCount: ({ session, sheetId }) => session.book.pictures(sheetId).length }
})
