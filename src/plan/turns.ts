/** Work in turns: it rests at every `undefined`, so that whoever asked for it can see to something else, or give it up. */
export type InTurns<T> = Generator<undefined, T>

/** Does work in turns without a rest. */
export function atOnce<T>(work: InTurns<T>): T {
  for (;;) {
    const step = work.next()
    if (step.done === true) return step.value
  }
}
