import type { Phrases } from "../phrases.ts";

/** Sending a job and opening what was sent. */
export const SENDING: Phrases = {
  "A link that was sent to you": "Ein Link, den Sie bekommen haben",
  "Copy the link": "Link kopieren",
  "Job without a title": "Auftrag ohne Titel",
  "Link copied. It holds the whole job in {count} characters.":
    "Link kopiert. Er enthält den ganzen Auftrag in {count} Zeichen.",
  "Link that holds “{name}”": "Link mit „{name}“",
  "Open the link": "Link öffnen",
  "Save as a file": "Als Datei sichern",
  "Send the link": "Link senden",
  "Send the open job": "Offenen Auftrag senden",
  "The browser does not let the page copy. The link is marked; copy it by hand.":
    "Der Browser lässt die Seite nicht kopieren. Der Link ist markiert; von Hand kopieren.",
  "The job is in the link itself. No server keeps it; whoever has the link can read it.":
    "Der Auftrag steckt im Link selbst. Kein Server hat ihn; wer den Link hat, kann ihn lesen.",
  "There is no job in this link.": "In diesem Link ist kein Auftrag.",
  "This file cannot be read as JSON or YAML. {line}":
    "Diese Datei ist nicht als JSON oder YAML lesbar. {line}",
  "This file holds no job. A job is a JSON or YAML file with water, spray and mix.":
    "Diese Datei enthält keinen Auftrag. Ein Auftrag ist eine JSON- oder YAML-Datei mit water, spray und mix.",
  "This link was cut short or changed on its way. Ask for it again.":
    "Dieser Link wurde gekürzt oder verändert. Noch einmal anfordern.",
  "This link was made by a newer Hardstand. Bring this one up to date.":
    "Diesen Link hat ein neueres Hardstand gemacht. Dieses aktualisieren.",
  "This page runs on this computer alone: the other side pastes the link into its own page, below.":
    "Diese Seite läuft nur auf diesem Rechner: Die andere Seite fügt den Link in ihre eigene Seite ein, unten.",
  "“{name}” came with the link and is open.": "„{name}“ kam mit dem Link und ist offen.",
  "“{name}” saved as a file. “Open file” opens it, here and elsewhere.":
    "„{name}“ als Datei gesichert. „Datei öffnen“ öffnet sie, hier und anderswo.",
};
