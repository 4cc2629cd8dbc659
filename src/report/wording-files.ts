import type { Wording } from "./wording.ts";

/** Sentences for files and for bare equilibrium cases. */
export const FILE_WORDING: Readonly<Record<string, Wording>> = {
  "file-missing": { say: "There is no such file.", mend: "Check the name and the folder." },
  "file-is-folder": { say: "This is a folder; a file is needed.", mend: "Name the file inside it." },
  "file-unreadable": { say: "The file could not be opened.", mend: "Check that you may read it." },
  "file-empty": { say: "There is nothing in it.", mend: "Start from one of the example jobs." },
  "file-too-large": { say: "This is far too large for a job.", mend: "Check that it is the right file." },
  "file-not-text": { say: "This is not a text file.", mend: "Save the job as plain text in UTF-8." },
  "file-too-deep": {
    say: "The nesting goes too deep for a job.",
    mend: "Check the brackets and the indents.",
  },
  "file-syntax": { say: "This line could not be read.", mend: "Check the line before it as well." },
  "file-several-documents": {
    say: "The file holds more than one document.",
    mend: "Keep one job a file; take out the --- lines.",
  },
  "file-alias": { say: "An alias (*name) could not be resolved.", mend: "Write the value out in its place." },
  "file-tag": { say: "A tag (!name) has no meaning here.", mend: "Take the tag out." },
  "key-repeated": {
    say: "This key stands twice; which one counts is not clear.",
    mend: "Keep one of the two.",
  },
  "number-not-finite": { say: "This number has no end.", mend: "Write an ordinary number." },
  "case-key-unknown": { say: "A case has no key of this name.", mend: "Mend its name or leave it out." },
  "case-key-missing": { say: "This key is needed in a case.", mend: "Add it." },
  "case-list-expected": { say: "A list belongs here.", mend: "Put the entries between square brackets." },
  "case-object-expected": { say: "Keys with values belong here.", mend: "Put them between curly brackets." },
  "case-number-expected": {
    say: "A number belongs here.",
    mend: "Write it without quotes and without a unit.",
  },
  "case-name-expected": { say: "A name belongs here.", mend: "Write it between quotes." },
  "case-activity-unknown": { say: "There is no such activity model.", mend: "Use one of the models named." },
  "case-name-duplicate": { say: "This name is used twice.", mend: "Give each one its own name." },
  "case-name-empty": { say: "A name is empty.", mend: "Write the name." },
  "case-component-unknown": {
    say: "This component is not in the list of components.",
    mend: "Add it there, or correct the name.",
  },
  "case-formation-empty": {
    say: "This is made of no component.",
    mend: "Give at least one coefficient that is not zero.",
  },
  "case-water-artefact": {
    say: "Only H+ and OH- may be made of hydrogen ions alone.",
    mend: "Take this species out.",
  },
  "case-system-empty": {
    say: "There is nothing to compute with.",
    mend: "Give at least one component and one species.",
  },
  "case-number-not-finite": { say: "This number has no end.", mend: "Write an ordinary number." },
};
