/**
 * Objects that are used again for the next tree, as a large inventory would otherwise make millions that live for a
 * moment. Whatever a plan keeps is copied out of them; planning one tree is never interrupted.
 */
export class Pool<T> {
  private readonly items: T[] = []
  private used = 0

  constructor(private readonly make: () => T) {}

  /** Everything taken so far may be used again. */
  reset(): void {
    this.used = 0
  }

  take(): T {
    const item = this.items[this.used] ?? this.make()
    this.items[this.used++] = item
    return item
  }
}
