/** The line below the grid: why the selected cell has no value, or what became of the last command. */
export interface Saying {
  /** A sentence about a command, which stays until the selection moves. */
  say(sentence: string, trouble?: boolean): void
  /** The sentence of the selected cell, or null where it has none. */
  cell(sentence: string | null): void
}

export function createSaying(): Saying {
  const line = document.getElementById('saying') as HTMLElement
  let aboutCell = false
  const show = (sentence: string, trouble: boolean) => {
    line.textContent = sentence
    line.classList.toggle('trouble', trouble)
  }
  return {
    say(sentence, trouble = false) {
      aboutCell = false
      show(sentence, trouble)
    },
    cell(sentence) {
      if (sentence !== null) show(sentence, true)
      else if (aboutCell) show('', false)
      aboutCell = sentence !== null
    }
  }
}
