import type { Phrases } from "../phrases.ts";

/** Sending a job and opening what was sent. */
export const SENDING: Phrases = {
  "A link that was sent to you": "Un lien qu'on vous a envoyé",
  "Copy the link": "Copier le lien",
  "Job without a title": "Travail sans titre",
  "Link copied. It holds the whole job in {count} characters.":
    "Lien copié. Il contient tout le travail en {count} caractères.",
  "Link that holds “{name}”": "Lien qui contient « {name} »",
  "Open the link": "Ouvrir le lien",
  "Save as a file": "Enregistrer en fichier",
  "Send the link": "Envoyer le lien",
  "Send the open job": "Envoyer le travail ouvert",
  "The browser does not let the page copy. The link is marked; copy it by hand.":
    "Le navigateur interdit la copie. Le lien est marqué ; le copier à la main.",
  "The job is in the link itself. No server keeps it; whoever has the link can read it.":
    "Le travail est dans le lien même. Aucun serveur ne le garde ; qui a le lien peut le lire.",
  "There is no job in this link.": "Il n'y a pas de travail dans ce lien.",
  "This file cannot be read as JSON or YAML. {line}": "Ce fichier n'est pas lisible en JSON ou YAML. {line}",
  "This file holds no job. A job is a JSON or YAML file with water, spray and mix.":
    "Ce fichier ne contient pas de travail. Un travail est un fichier JSON ou YAML avec water, spray et mix.",
  "This link was cut short or changed on its way. Ask for it again.":
    "Ce lien a été coupé ou changé en route. Le redemander.",
  "This link was made by a newer Hardstand. Bring this one up to date.":
    "Ce lien vient d'un Hardstand plus récent. Mettre celui-ci à jour.",
  "This page runs on this computer alone: the other side pastes the link into its own page, below.":
    "Cette page tourne sur ce seul ordinateur : l'autre côté colle le lien dans sa propre page, ci-dessous.",
  "“{name}” came with the link and is open.": "« {name} » est venu avec le lien et est ouvert.",
  "“{name}” saved as a file. “Open file” opens it, here and elsewhere.":
    "« {name} » enregistré en fichier. « Ouvrir un fichier » l'ouvre, ici et ailleurs.",
};
