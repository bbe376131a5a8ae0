const kept: object[] = []

/**
 * Keeps an instance of a class for good. The engine throws away what it compiled for a class whenever the memory is tidied up
 * while no instance is left, and a long document is described in less time than compiling that again takes.
 */
export function keepCompiled(instance: object): void {
  kept.push(instance)
}
