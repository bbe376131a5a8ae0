import { problem, type Problem } from '../../shared/problems'

/** What this workbook keeps under a key, as it was kept; undefined where there is nothing. */
export function readSetting(key: string): unknown {
  const kept: unknown = Office.context.document.settings.get(key)
  return kept ?? undefined
}

/** Keeps a text in the workbook, or with null nothing more; a problem where the workbook does not take it. */
export function keepSetting(key: string, text: string | null): Promise<Problem | null> {
  const { settings } = Office.context.document
  if (text === null) settings.remove(key)
  else settings.set(key, text)
  return new Promise((resolve) => {
    settings.saveAsync((result) => {
      const failed = result.status === Office.AsyncResultStatus.Failed
      resolve(failed ? problem('answers-not-kept', '', { text: result.error.message }) : null)
    })
  })
}
