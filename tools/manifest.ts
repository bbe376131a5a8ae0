import { version } from '../shared/version'

/** The address that the manifest in the repository is written for. */
export const developmentBase = 'https://localhost:3000'

/** The address a build is for, checked and without a slash at its end. */
export function checkedBase(base: string): string {
  let url: URL
  try {
    url = new URL(base)
  } catch {
    throw new Error(`--base ${base} is not an address: give one such as https://example.org/limbwright`)
  }
  if (url.protocol !== 'https:' && !/^(localhost|127\.0\.0\.1)$/.test(url.hostname))
    throw new Error(`--base ${base} is not https: Office loads add-ins over https only`)
  if (url.search !== '' || url.hash !== '') throw new Error(`--base ${base} must end with its path`)
  return url.href.replace(/\/+$/, '')
}

/** The manifest for a base address, at this version. */
export function manifestFor(template: string, base: string): string {
  const escaped = base.replace(/&/g, '&amp;').replace(/"/g, '&quot;')
  return template
    .replaceAll(developmentBase, escaped)
    .replace(/<Version>[^<]*<\/Version>/, `<Version>${version}.0</Version>`)
}
