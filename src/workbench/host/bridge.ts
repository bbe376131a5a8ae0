/** Script of the pane's frame in the workbench, before office.js: joins the frame to the host in the page around it. */
import { setBridge, type HostPort } from './bridgeObjects'

type Outer = Window & { limbwrightHost?: HostPort }

const host = (window.parent as Outer).limbwrightHost
if (!host) throw new Error('The page around this frame has no Office host; open the workbench page instead.')
const stop = setBridge(window as never, host)
window.addEventListener('pagehide', stop)
