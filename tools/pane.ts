const marker = '<!-- scripts -->'

/** Microsoft's hosted copy, which a deployed add-in must load. */
export const hostedOffice = 'https://appsforoffice.microsoft.com/lib/1/hosted/office.js'

/** Where hosted office.js may load a part of itself from. */
const officeParts = 'https://ajax.aspnetcdn.com'

const elsewhere = (office: string): string =>
  /^https?:/.test(office) ? ` ${new URL(office).origin} ${officeParts}` : ''

/** What the page itself holds to, whoever serves it: what could run foreign code or send a form stays shut. */
export function pagePolicy(office: string): string {
  return [
    `script-src 'self'${elsewhere(office)}`,
    "object-src 'none'",
    "base-uri 'self'",
    "form-action 'none'"
  ].join('; ')
}

/**
 * The header for a server that hands the page out. Microsoft publishes no list of what office.js asks for, so whoever
 * serves it can loosen this where their Office needs more. No rule for who may frame the page, so that Office may.
 * office.js sets styles of its own and opens frames of Microsoft's, which can run nothing here; our code needs neither.
 */
export function serverPolicy(office: string): string {
  return [
    "default-src 'self'",
    `script-src 'self'${elsewhere(office)}`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "connect-src 'self'",
    'frame-src https:',
    "object-src 'none'",
    "base-uri 'self'",
    "form-action 'none'"
  ].join('; ')
}

/** Says what is missing where a script does not come: the first of all. */
export const loadingScript = 'loading.js'

/**
 * The pane's page with its scripts: the one that watches the others come, those that must come before office.js,
 * office.js, the cell functions, the pane. All are classic and none is deferred, so they run in this order.
 */
export function panePage(template: string, office: string, before: readonly string[] = []): string {
  if (template.split(marker).length !== 2) throw new Error(`taskpane.html needs the line ${marker} once`)
  const scripts = [loadingScript, ...before, office, 'functions.js', 'taskpane.js']
  const tags = scripts.map((source) => `<script src="${source}"></script>`).join('\n    ')
  const policy = `<meta http-equiv="Content-Security-Policy" content="${pagePolicy(office)}" />`
  return template.replace(marker, tags).replace(/(<meta charset="[^"]*" ?\/?>)/, `$1\n    ${policy}`)
}
