import { describing } from './engine'

console.log(JSON.stringify(describing()))
