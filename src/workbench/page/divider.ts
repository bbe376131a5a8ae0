/** The edge between the grid and the pane: dragged, or moved with the arrow keys; the pane can be put away. */
const least = 320
const most = 500

export interface Divider {
  shown(): boolean
  show(shown: boolean): void
}

export function followDivider(onChange: (shown: boolean) => void): Divider {
  const divider = document.getElementById('divider') as HTMLElement
  const beside = document.getElementById('beside') as HTMLElement
  const desk = divider.parentElement as HTMLElement
  let width = 350

  const set = (wanted: number) => {
    width = Math.round(Math.min(most, Math.max(least, wanted)))
    beside.style.setProperty('--pane-width', `${width}px`)
    divider.setAttribute('aria-valuenow', String(width))
  }
  divider.addEventListener('keydown', (event) => {
    const steps: Record<string, number> = {
      ArrowLeft: width + 10,
      ArrowRight: width - 10,
      Home: most,
      End: least
    }
    const wanted = steps[event.key]
    if (wanted === undefined) return
    set(wanted)
    event.preventDefault()
  })
  divider.addEventListener('pointerdown', (event) => {
    divider.setPointerCapture(event.pointerId)
    desk.classList.add('dragging')
  })
  divider.addEventListener('pointermove', (event) => {
    if (divider.hasPointerCapture(event.pointerId)) set(desk.getBoundingClientRect().right - event.clientX)
  })
  for (const end of ['pointerup', 'pointercancel'])
    divider.addEventListener(end, () => desk.classList.remove('dragging'))
  return {
    shown: () => !beside.hidden,
    show(shown) {
      beside.hidden = !shown
      divider.hidden = !shown
      onChange(shown)
    }
  }
}
