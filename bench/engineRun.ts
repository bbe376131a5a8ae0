import { cellFunction, planning } from './engine'

console.log(JSON.stringify([...planning(), ...cellFunction()]))
