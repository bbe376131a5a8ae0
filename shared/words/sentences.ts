import { locale } from './locale'

/** A capital at the front. */
export function capital(text: string): string {
  return text.charAt(0).toLocaleUpperCase(locale) + text.slice(1)
}

/** A full stop at the end, where there is no mark yet; the front stays as it is, for what follows a colon. */
export function closed(text: string): string {
  const trimmed = text.trim()
  return trimmed === '' || /[.!?…]$/.test(trimmed) ? trimmed : `${trimmed}.`
}

/** A sentence of its own: a capital at the front and a full stop at the end. */
export function sentence(text: string): string {
  return capital(closed(text))
}
