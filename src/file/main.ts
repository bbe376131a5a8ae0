import { logErrorMessage } from 'office-addin-cli'
import { runCommandLine } from './commandLine'

/** The local day, not Greenwich's: a plan made in the evening keeps its date. */
function today(): string {
  const now = new Date()
  const two = (part: number) => String(part).padStart(2, '0')
  return `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

void runCommandLine(process.argv.slice(2), {
  out: (text) => {
    process.stdout.write(`${text}\n`)
  },
  fail: logErrorMessage,
  today: today(),
  // npm runs scripts in the project's folder and gives here the folder that the user was in.
  folder: process.env.INIT_CWD ?? process.cwd()
}).then((code) => {
  process.exitCode = code
})
