import { documentBook, planDocuments } from '../sheets/documentBook'
import { aboutDetails } from './detailsFile'
import { usage } from './planArguments'

const documents = planDocuments
  .map((kind) => `    ${kind.padEnd(14)} ${documentBook[kind].title}: ${documentBook[kind].about}`)
  .join('\n')

/** What each argument means. */
export const help = `${usage}

Plans the inventory in a file, .xlsx or .csv, and prints the plan. Without a file, the sample inventory (an invented
scenario) is planned. An .xlsx may also hold sheets Rules, Rates and Job details, which are read.

What is printed and written
  --json               Prints the plan as JSON instead of text.
  --out FILE.xlsx      Writes a workbook: the documents, the inventory as it was read, and the sheets Rules, Rates and Job
                       details, so that it can be opened, changed and planned again.
  --force              Lets --out replace a file that is no untouched plan of ours. The inventory itself never is replaced.
  --documents A,B      Writes these documents only, of:
${documents}
  --paper letter|a4    The paper of the documents. Unless given: the job details, else letter for inches and A4 for cm.

When and for whom
  --date YYYY-MM-DD    The day of the plan, today unless given.
  --first-year YYYY    The year of the first visit; the year of that day unless given here or in the job details.
  --details FILE.json  Whose job it is, for the head of each document and the foot of each page: an object with any of
${aboutDetails}
                       A key goes before the Job details sheet of the file, an argument before both.
  --offer WHAT         What the client is offered: first (the first visit to each tree, unless given), whole (every visit), or
                       budget=N (the first visits that do most for N, tax included; "budget=$2,000" is understood).

How the file is read
  --sheet NAME         Reads that sheet only.
  --units in-ft|cm-m   The units where neither a header nor a cell names one.
  --column WHAT        What a column gives, as often as needed:
    "J=stem above"                the column by its letters
    '"Dia 2"=limb diameter (cm)'  by its header in quotes, with its unit
    "Limbs!J=-"                   on one sheet only; - where it is not used

  --help, -h           This text.
  --version            The version.

Ends with 0 where there is a plan, with 2 and one line on stderr where an argument or a file cannot be used, and with 3 where
no row could be planned.`
