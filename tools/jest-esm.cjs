/* Jest runs CommonJS; the spreadsheet-file library ships modules only, so its files are converted on the fly. */
const { transformSync } = require('esbuild')

module.exports = {
  process(source) {
    const { code } = transformSync(source, { format: 'cjs', target: 'node20' })
    return { code }
  }
}
