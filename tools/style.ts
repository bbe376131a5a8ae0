import { join } from 'node:path'
import { compile, type Logger } from 'sass'

const root = join(__dirname, '..')

/** Warnings about the library's own Sass are not ours to fix; our own still show. */
const ownWarningsOnly: typeof Logger.silent = {
  warn(message, { span, deprecation }) {
    if (deprecation && !span?.url?.pathname.includes('/taskpane/')) return
    console.warn(message)
  }
}

/**
 * The pane's style sheet. The office-ui-fabric-core Sass is on the load path; its ready CSS fetches fonts and icons
 * from elsewhere, so an address in the output stops the build.
 */
export function paneStyle(): string {
  const { css } = compile(join(root, 'taskpane', 'taskpane.scss'), {
    loadPaths: [
      join(root, 'node_modules', 'office-ui-fabric-core', 'src', 'sass'),
      join(root, 'node_modules')
    ],
    style: 'compressed',
    quietDeps: true,
    logger: ownWarningsOnly
  })
  const address = /(?:https?:)?\/\/[^\s"')]+|@font-face/.exec(css)
  if (address) throw new Error(`taskpane.css would fetch from elsewhere: ${address[0]}`)
  return css
}
