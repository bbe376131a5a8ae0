/** The command as a process of its own: what goes where, and how it ends. */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'

const root = join(__dirname, '..', '..')

function plan(...args: string[]) {
  const main = join('src', 'file', 'main.ts')
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--import', 'tsx', main, ...args], {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, INIT_CWD: root }
  })
  return { status, stdout, stderr }
}

test('the sample inventory is planned to standard output, and nothing else is printed', () => {
  const { status, stdout, stderr } = plan('--json', '--date', '2026-03-02')
  expect(stderr).toBe('')
  expect(status).toBe(0)
  expect((JSON.parse(stdout) as { trees: unknown[] }).trees).toHaveLength(15)
})

test('a file that is not there ends with 2 and one line on standard error', () => {
  const { status, stdout, stderr } = plan('no such file.xlsx', '--json')
  expect(status).toBe(2)
  expect(stdout).toBe('')
  expect(stderr.trimEnd().split('\n')).toHaveLength(1)
  expect(stderr).toMatch(/There is no file .*no such file\.xlsx/)
})

test('an inventory without a usable row ends with 3 and still prints the JSON', () => {
  const { status, stdout } = plan(join('tests', 'file', 'headersOnly.csv'), '--json')
  expect(status).toBe(3)
  expect((JSON.parse(stdout) as { trees: unknown[] }).trees).toEqual([])
})

test('a reader that closes the pipe early, or a full disk, ends it without a trace of the program', () => {
  const piped = (to: string) =>
    spawnSync('bash', ['-c', `"$0" --import tsx src/file/main.ts ${to}`, process.execPath], {
      cwd: root,
      encoding: 'utf8'
    })
  expect(piped('| head -n 1; exit "${PIPESTATUS[0]}"')).toMatchObject({ status: 0, stderr: '' })
  const full = piped('> /dev/full')
  expect(full.status).toBe(2)
  expect(full.stderr.trimEnd().split('\n')).toHaveLength(1)
  expect(full.stderr).toContain('could not be printed (ENOSPC)')
})
