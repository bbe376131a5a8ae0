import { planCommand } from '../../taskpane/planCommand'

const host = globalThis as { Office?: unknown }

function hostThat(shows: () => Promise<void>): void {
  host.Office = { addin: { showAsTaskpane: shows } }
}

afterEach(() => {
  delete host.Office
})

test('the command shows the pane, plans and then tells the host that it has ended', async () => {
  const order: string[] = []
  hostThat(() => Promise.resolve(void order.push('shown')))
  const pane = { planSelection: () => Promise.resolve(void order.push('planned')) }
  await planCommand({ completed: () => order.push('completed') }, Promise.resolve(pane))
  expect(order).toEqual(['shown', 'planned', 'completed'])
})

test('a host that cannot show the pane still gets the plan', async () => {
  const order: string[] = []
  hostThat(() => Promise.reject(new Error('not supported')))
  const pane = { planSelection: () => Promise.resolve(void order.push('planned')) }
  await planCommand({ completed: () => order.push('completed') }, Promise.resolve(pane))
  expect(order).toEqual(['planned', 'completed'])
})

test('the host is told even where planning fails or there is no pane', async () => {
  hostThat(() => Promise.resolve())
  const completed = jest.fn()
  const broken = { planSelection: () => Promise.reject(new Error('broken')) }
  await expect(planCommand({ completed }, Promise.resolve(broken))).rejects.toThrow('broken')
  await planCommand({ completed }, Promise.resolve(null))
  expect(completed).toHaveBeenCalledTimes(2)
})
