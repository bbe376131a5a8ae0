import { generateCustomFunctionsMetadata } from 'custom-functions-metadata'
import { countTags, functionFiles } from './functionDocs'

/** One entry of functions.json, as far as the build and its tests look into it. */
export interface FunctionEntry {
  id: string
  name: string
  description: string
  helpUrl?: string
  parameters: {
    name: string
    description: string
    optional?: boolean
    type: string
    dimensionality: string
  }[]
}

export interface FunctionMetadata {
  allowErrorForDataTypeAny: boolean
  allowCustomDataForDataTypeAny: boolean
  functions: FunctionEntry[]
}

/**
 * functions.json from the doc comments. The generator reads file by file, drops what it does not recognize and does not
 * notice an id that two files share, so both are counted here. The two flags it cannot set let error cells reach the
 * functions as values.
 */
export async function functionMetadata(base: string): Promise<FunctionMetadata> {
  const files = functionFiles()
  const { metadataJson, errors } = await generateCustomFunctionsMetadata(files)
  if (errors.length > 0) throw new Error(`The cell functions’ doc comments are wrong:\n${errors.join('\n')}`)
  const { functions } = JSON.parse(metadataJson) as { functions: FunctionEntry[] }
  const tagged = files.reduce((sum, file) => sum + countTags(file), 0)
  const ids = new Set(functions.map((entry) => entry.id))
  if (functions.length !== tagged || ids.size !== tagged)
    throw new Error(
      `${tagged} functions are tagged, ${functions.length} were found, ${ids.size} have ids of their own`
    )
  return {
    allowErrorForDataTypeAny: true,
    allowCustomDataForDataTypeAny: false,
    functions: functions.map((entry) => ({
      ...entry,
      helpUrl: `${base}/help/${entry.id.toLowerCase()}.html`
    }))
  }
}
