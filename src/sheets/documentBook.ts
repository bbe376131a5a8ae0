/** What a document can be made from. */
export type Need =
  | 'plan'
  /** What is offered to the client, with its prices: the same value for every document. */
  | 'offer'
  /** Whose job it is, and for whom: the same value for every document. */
  | 'details'
  /** Pictures of trees. */
  | 'photographs'

interface DocumentEntry {
  /** Stands in its first cell, which is also how a sheet is known to be ours, on its tab, and wherever it is chosen. */
  title: string
  /** True of a sheet that is written once and is a person's own from then on: it is read, and never replaced. */
  usersOwn: boolean
  /** Of a document of a plan: what it is, after its title. Of a person's own: a sentence that says what it is for. */
  about: string
  /** What a document of a plan is made from; its description is handed nothing else. */
  needs: readonly Need[]
  /** Written unless the pane is told otherwise. */
  ticked: boolean
  /** The document that it is written with and never without. */
  partOf?: string
}

/**
 * Every document, in the order of its sheets. Only words stand here, as the pane holds this list before any document is
 * described; `describeDocuments.ts` holds how each is described and does not compile without one of them.
 */
export const documentBook = {
  'cut-plan': {
    title: 'Cut plan',
    usersOwn: false,
    about: 'every cut, every visit, every check',
    needs: ['plan', 'details'],
    ticked: true
  },
  estimate: {
    title: 'Estimate',
    usersOwn: false,
    about: 'hours and prices, with formulas',
    needs: ['plan', 'offer', 'details'],
    ticked: true
  },
  'estimate-working': {
    title: 'Estimate working',
    usersOwn: false,
    about: 'how its prices come about, hidden',
    needs: ['plan', 'offer', 'details'],
    ticked: false,
    partOf: 'estimate'
  },
  'client-report': {
    title: 'Client report',
    usersOwn: false,
    about: 'a proposal in plain words, to sign',
    needs: ['plan', 'offer', 'details', 'photographs'],
    ticked: false
  },
  'work-order': {
    title: 'Work order',
    usersOwn: false,
    about: 'by crew day, a card per tree with its drawing, boxes to tick',
    needs: ['plan', 'offer', 'details'],
    ticked: false
  },
  'round-sheet': {
    title: 'Round sheet',
    usersOwn: false,
    about: 'one line per tree for many young trees, from the ground or with a pole',
    needs: ['plan', 'offer', 'details'],
    ticked: false
  },
  specification: {
    title: 'Specification',
    usersOwn: false,
    about: 'text for a contract, tree by tree',
    needs: ['plan', 'offer', 'details'],
    ticked: false
  },
  rules: {
    title: 'Rules',
    usersOwn: true,
    about:
      'A Rules sheet holds every number the plan goes by, for you to change, and asks for the region and the season.',
    needs: [],
    ticked: false
  },
  rates: {
    title: 'Rates',
    usersOwn: true,
    about:
      'A Rates sheet holds every rate of the estimate with an invented value in it, for you to put your own in its place.',
    needs: [],
    ticked: false
  },
  'job-details': {
    title: 'Job details',
    usersOwn: true,
    about:
      'A Job details sheet holds your letterhead, the client, the site, the first work year and the terms, which every document prints.',
    needs: [],
    ticked: false
  }
} as const satisfies Record<string, DocumentEntry>

type Book = typeof documentBook

/** Which of our documents it is; also the key by which an earlier one is found again. */
export type DocumentKind = keyof Book

/** A document that a plan can be written as, with whatever is part of it. */
export type PlanDocument = {
  [Kind in DocumentKind]: Book[Kind] extends { usersOwn: true } | { partOf: string } ? never : Kind
}[DocumentKind]

/** A sheet that is a person's own once it is written. */
export type UsersDocument = {
  [Kind in DocumentKind]: Book[Kind] extends { usersOwn: true } ? Kind : never
}[DocumentKind]

/** What a document is made from. */
export type NeedsOf<Kind extends DocumentKind> = Book[Kind]['needs'][number]

export const documentKinds = Object.keys(documentBook) as DocumentKind[]

/** The documents that a plan can be written as, in the order of their sheets. */
export const planDocuments: readonly PlanDocument[] = documentKinds.filter(
  (kind): kind is PlanDocument => !documentBook[kind].usersOwn && !('partOf' in documentBook[kind])
)
