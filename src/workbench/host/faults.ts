/** What the host says when it does not do what it was asked: the Excel API's error codes with sentences of our own. */
import { BookFault } from '../book'

/** A member that the add-in is not known to use: most often a typing error or an unplanned call. */
export function notAnswered(member: string): BookFault {
  return new BookFault('NotImplemented', `Limbwright's test host does not answer ${member}`)
}

export function invalidArgument(what: string): BookFault {
  return new BookFault('InvalidArgument', what)
}

export function itemNotFound(what: string): BookFault {
  return new BookFault('ItemNotFound', `There is no ${what} in this workbook.`)
}

export function itemExists(what: string): BookFault {
  return new BookFault('ItemAlreadyExists', `There is already ${what} in this workbook.`)
}

export function accessDenied(what: string): BookFault {
  return new BookFault('AccessDenied', `${what} is protected.`)
}

export function invalidOperation(what: string): BookFault {
  return new BookFault('InvalidOperation', what)
}
