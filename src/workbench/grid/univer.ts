/**
 * Starts the grid: Univer with the presets that the workbench needs, in English, inside one element of the page.
 */
import { LifecycleService, LifecycleStages, LocaleType, mergeLocales, Univer } from '@univerjs/core'
import { FUniver } from '@univerjs/core/facade'
import { CalculationMode, UniverSheetsCorePreset } from '@univerjs/preset-sheets-core'
import coreWords from '@univerjs/preset-sheets-core/locales/en-US'
import { UniverSheetsConditionalFormattingPreset } from '@univerjs/preset-sheets-conditional-formatting'
import conditionalWords from '@univerjs/preset-sheets-conditional-formatting/locales/en-US'
import { UniverSheetsDataValidationPreset } from '@univerjs/preset-sheets-data-validation'
import validationWords from '@univerjs/preset-sheets-data-validation/locales/en-US'
import { UniverSheetsFilterPreset } from '@univerjs/preset-sheets-filter'
import filterWords from '@univerjs/preset-sheets-filter/locales/en-US'
import { UniverSheetsFindReplacePreset } from '@univerjs/preset-sheets-find-replace'
import findWords from '@univerjs/preset-sheets-find-replace/locales/en-US'
import { UniverSheetsSortPreset } from '@univerjs/preset-sheets-sort'
import sortWords from '@univerjs/preset-sheets-sort/locales/en-US'
import { UniverSheetsTablePlugin, UniverSheetsTableUIPlugin } from '@univerjs/preset-sheets-table'
import tableWords from '@univerjs/preset-sheets-table/locales/en-US'
import { tableThemes } from './tableThemes'

/** Tables with our own looks, and without the grid's label that would cover the row above them. */
const tables: ReturnType<typeof UniverSheetsCorePreset> = {
  plugins: [
    [UniverSheetsTablePlugin, { userThemes: tableThemes, defaultThemeIndex: 0 }],
    [UniverSheetsTableUIPlugin, { hideAnchor: true }]
  ]
}

export interface Grid {
  univer: Univer
  api: FUniver
}

export function startGrid(container: HTMLElement, dark: boolean): Grid {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    darkMode: dark,
    locales: {
      [LocaleType.EN_US]: mergeLocales(
        coreWords,
        tableWords,
        validationWords,
        conditionalWords,
        filterWords,
        sortWords,
        findWords
      )
    }
  })
  const presets = [
    UniverSheetsCorePreset({
      container,
      header: true,
      toolbar: false,
      formula: { initialFormulaComputing: CalculationMode.FORCED }
    }),
    tables,
    UniverSheetsDataValidationPreset(),
    UniverSheetsConditionalFormattingPreset(),
    UniverSheetsFilterPreset(),
    UniverSheetsSortPreset(),
    UniverSheetsFindReplacePreset()
  ]
  for (const preset of presets)
    for (const plugin of preset.plugins) {
      if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1])
      else univer.registerPlugin(plugin)
    }
  return { univer, api: FUniver.newAPI(univer) }
}

/** Resolves when the grid has drawn its first workbook; before that it can neither scroll nor show a hint. */
export function gridDrawn({ univer }: Grid): Promise<void> {
  return univer.__getInjector().get(LifecycleService).onStage(LifecycleStages.Rendered)
}
