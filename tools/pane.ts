const marker = '<!-- scripts -->'

/** Where hosted office.js may load a part of itself from. */
const officeParts = 'https://ajax.aspnetcdn.com'

/**
 * What the page may load: its own files and office.js, nothing else. No frame rule, so that Office may show it in its
 * frame. Styles set by office.js itself are allowed.
 */
export function contentPolicy(office: string): string {
  const elsewhere = /^https?:/.test(office) ? ` ${new URL(office).origin} ${officeParts}` : ''
  return [
    "default-src 'self'",
    `script-src 'self'${elsewhere}`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "connect-src 'self'",
    "object-src 'none'",
    "base-uri 'self'",
    "form-action 'none'"
  ].join('; ')
}

/**
 * The pane's page with its scripts: those that must come before office.js, office.js, the cell functions, the pane.
 * All are classic and none is deferred, so they run in this order.
 */
export function panePage(template: string, office: string, before: readonly string[] = []): string {
  if (template.split(marker).length !== 2) throw new Error(`taskpane.html needs the line ${marker} once`)
  const scripts = [...before, office, 'functions.js', 'taskpane.js']
  const tags = scripts.map((source) => `<script src="${source}"></script>`).join('\n    ')
  const policy = `<meta http-equiv="Content-Security-Policy" content="${contentPolicy(office)}" />`
  return template.replace(marker, tags).replace(/(<meta charset="[^"]*" ?\/?>)/, `$1\n    ${policy}`)
}
