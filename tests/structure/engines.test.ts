/** The versions of Node that package.json names are such that every package we install runs on them. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { subset } from 'semver'

interface Locked {
  packages: Record<string, { version?: string; engines?: { node?: string } }>
}

const json = (name: string): unknown => JSON.parse(readFileSync(join(__dirname, '../..', name), 'utf8'))
const { engines } = json('package.json') as { engines: { node: string } }
const needing = Object.entries((json('package-lock.json') as Locked).packages).flatMap(
  ([path, { version = '', engines: needed }]) =>
    path === '' || needed?.node === undefined ? [] : [{ name: `${path} ${version}`, node: needed.node }]
)

test('every package runs on every Node that is named', () => {
  expect(needing.length).toBeGreaterThan(300)
  expect(needing.filter(({ node }) => !subset(engines.node, node))).toEqual([])
})

test('no Node is left out that every package would run on', () => {
  const candidates = ['20.18.0', '20.19.0', '22.12.0', '22.13.0', '23.0.0', '24.0.0', '26.0.0']
  const runsAll = candidates.filter((version) => needing.every(({ node }) => subset(version, node)))
  expect(candidates.filter((version) => subset(version, engines.node))).toEqual(runsAll)
})
