import type { PageLayout } from './book'

/** The page set-up of a sheet that nobody has set up. */
export function plainPage(): PageLayout {
  return {
    orientation: 'Portrait',
    paperSize: 'Letter',
    fitToWidth: null,
    fitToHeight: null,
    titleRows: null,
    footerLeft: '',
    footerCenter: '',
    footerRight: ''
  }
}
