import { cellFunction, hardestTree, planning } from './engine'

console.log(JSON.stringify([...planning(), ...hardestTree(), ...cellFunction()]))
