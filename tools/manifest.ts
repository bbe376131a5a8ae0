import { version } from '../shared/version'

/** The address that the manifest in the repository is written for. */
export const developmentBase = 'https://localhost:3000'

/** An address of the web, or why it is none. */
function addressOf(option: string, given: string, example: string): URL {
  try {
    return new URL(given)
  } catch {
    throw new Error(`--${option} ${given} is not an address: give one such as ${example}`)
  }
}

/** The address a build is for, checked and without a slash at its end. */
export function checkedBase(base: string): string {
  const url = addressOf('base', base, 'https://example.org/limbwright')
  if (url.protocol !== 'https:' && !/^(localhost|127\.0\.0\.1)$/.test(url.hostname))
    throw new Error(`--base ${base} is not https: Office loads add-ins over https only`)
  if (url.search !== '' || url.hash !== '') throw new Error(`--base ${base} must end with its path`)
  return url.href.replace(/\/+$/, '')
}

/** The address of office.js in the cloud of those who will use the build. */
export function checkedOffice(office: string): string {
  const url = addressOf('office', office, 'https://appsforoffice.microsoft.com/lib/1/hosted/office.js')
  if (url.protocol !== 'https:')
    throw new Error(`--office ${office} is not https: Office loads add-ins over https only`)
  if (!/\/office(\.debug)?\.js$/.test(url.pathname))
    throw new Error(`--office ${office} does not end in office.js: give the address of that script`)
  return url.href
}

/** The page where people ask for help. */
export function checkedSupport(support: string): string {
  const url = addressOf('support', support, 'https://example.org/help')
  if (url.protocol !== 'https:')
    throw new Error(`--support ${support} is not https: a manifest takes no other`)
  return url.href
}

const attribute = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/"/g, '&quot;').replace(/</g, '&lt;')

/** The manifest for a base address, at this version, with a page of its own for support where there is one. */
export function manifestFor(template: string, base: string, support?: string): string {
  const based = template
    .replaceAll(developmentBase, attribute(base))
    .replace(/<Version>[^<]*<\/Version>/, `<Version>${version}.0</Version>`)
  if (support === undefined) return based
  return based.replace(/(<SupportUrl DefaultValue=")[^"]*/, (_, head: string) => head + attribute(support))
}
