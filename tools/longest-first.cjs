/* Runs the checks in a browser first: they are long and often wait, and the short ones fill the gaps. */
const Sequencer = require('@jest/test-sequencer').default

module.exports = class extends Sequencer {
  sort(tests) {
    const inBrowser = ({ context }) => (context.config.displayName?.name === 'browser' ? 0 : 1)
    return super.sort(tests).toSorted((a, b) => inBrowser(a) - inBrowser(b))
  }
}
