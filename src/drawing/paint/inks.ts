import { palette } from '../../../shared/palette'
import type { Paint } from '../drawnLooks'
import type { DrawingPalette } from '../shapes'

/**
 * What a drawing stands on. A page lends its own colors (light, dark, forced): the text color, and the properties
 * --drawing-paper, --drawing-leader, --drawing-cut and --drawing-wood where it sets them. Paper is white with fixed
 * colors, for a picture file.
 */
export type Ground = 'page' | 'paper'

type Inks = Readonly<Record<Paint, string>>

const page: Record<DrawingPalette, Inks> = {
  color: {
    none: 'none',
    ink: 'currentColor',
    paper: 'var(--drawing-paper, Canvas)',
    wood: 'var(--drawing-wood, currentColor)',
    leader: 'var(--drawing-leader, currentColor)',
    cut: 'var(--drawing-cut, currentColor)'
  },
  print: {
    none: 'none',
    ink: 'currentColor',
    paper: 'var(--drawing-paper, Canvas)',
    wood: 'currentColor',
    leader: 'currentColor',
    cut: 'currentColor'
  }
}

const paper: Record<DrawingPalette, Inks> = {
  color: {
    none: 'none',
    ink: palette.ink,
    paper: '#ffffff',
    wood: '#8a6748',
    leader: palette.moss,
    cut: palette.umber
  },
  print: {
    none: 'none',
    ink: '#000000',
    paper: '#ffffff',
    wood: '#000000',
    leader: '#000000',
    cut: '#000000'
  }
}

/** The paint of each role on a ground. */
export function inksOf(ground: Ground, wanted: DrawingPalette): Inks {
  return ground === 'page' ? page[wanted] : paper[wanted]
}
