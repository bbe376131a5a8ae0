import { logErrorMessage } from 'office-addin-cli'
import { runCommandLine } from './commandLine'

/** The local day, not Greenwich's: a plan made in the evening keeps its date. */
function today(): string {
  const now = new Date()
  const two = (part: number) => String(part).padStart(2, '0')
  return `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

/** A reader that has seen enough closes the pipe; anything else means that the plan was not printed. */
process.stdout.on('error', ({ code }: NodeJS.ErrnoException) => {
  if (code === 'EPIPE') process.exit()
  logErrorMessage(`The plan could not be printed (${code ?? 'unknown'}).`)
  process.exit(2)
})

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
