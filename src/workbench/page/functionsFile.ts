/** Loads the built cell functions into this page: their descriptions, and their bodies as the script associates them. */
import { gatherFunctions, type CellFunction } from '../grid/calling'
import type { FunctionEntry } from '../grid/cellFunctions'

export interface LoadedFunctions {
  entries: FunctionEntry[]
  bodies: ReadonlyMap<string, CellFunction>
}

function runScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement('script')
    script.src = address
    script.onload = () => resolve()
    script.onerror = () => reject(new Error(`${address} could not be loaded.`))
    document.head.append(script)
  })
}

export async function loadFunctions(): Promise<LoadedFunctions> {
  const gathering = gatherFunctions()
  Object.assign(window, { CustomFunctions: gathering.CustomFunctions })
  const [metadata] = await Promise.all([
    fetch('/addin/functions.json').then((answer) => answer.json() as Promise<{ functions: FunctionEntry[] }>),
    runScript('/addin/functions.js')
  ])
  return { entries: metadata.functions, bodies: gathering.functions }
}
