/** What `--help` prints: examples first. */
export const HELP = `Hardstand: from a water test and a tank mix to a fill card.

Examples
  hardstand plan job.yaml                   the whole job, in words
  hardstand plan job.yaml --json            the same as data
  hardstand plan job.yaml --card            the fill card as text
  hardstand plan job.yaml --html plan.html  card and report in one file, to pass on
  hardstand plan job.yaml --pdf plan.pdf    the same to print, on A4 or --paper Letter
  hardstand water job.yaml                  the water test alone, checked and completed
  hardstand complaint record.yaml           what the water could have taken of a failed dose
  hardstand sheet report.csv                what a laboratory sheet says, as readings
  hardstand speciate case.json --json       one bare equilibrium
  hardstand flasks demo.yaml --html s.html  a demonstration, as a script to print
  hardstand serve --port 4173               the page, on this machine only
  cat job.yaml | hardstand plan - --json    a job from standard input

Commands
  plan JOB        what the water does to each active, the ways out, order and loads
  water JOB       the composition with what was assumed and what looks odd;
                  a file with the water block alone will do
  complaint RECORD
                  what the water could have taken from an application that failed,
                  beside the other usual causes; never proof
  sheet FILE      readings found on a laboratory sheet (text, CSV or PDF), and what to ask
  speciate CASE   components, totals and constants to concentrations
  flasks DEMO     what each flask of a demonstration looks like, step by step
  serve           the page in a browser

Options
  --json          data on standard output
  --card          the fill card as plain text (plan); with --html or --pdf the card alone
  --report        with --html or --pdf: the report alone (plan)
  --html FILE     card and report in one HTML file (plan), the answer (complaint),
                  or the script (flasks)
  --pdf FILE      card and report as a PDF, printed by an installed browser (plan)
  --paper SIZE    A4 (if left out) or Letter, for the PDF
  --svg FILE      the flasks drawn side by side (flasks)
  --port N        port of the page (serve)
  --language TAG  words, numbers and dates of the result: en-GB, en-US, de, fr, es
                  (plan, complaint, flasks)
  --strict        leave with 4 when a figure lies outside the range it was fitted to
  -h, --help      this text
  --version       version of the program and of its data

JOB, CASE and DEMO are JSON or YAML; - reads standard input. Formats: schemas/.
Results go to standard output, remarks to standard error.
Leaves with 0 done, 2 bad input, 3 no programme meets the aim, 4 outside the
fitted range under --strict (this comes before 3).
`;
