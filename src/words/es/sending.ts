import type { Phrases } from "../phrases.ts";

/** Sending a job and opening what was sent. */
export const SENDING: Phrases = {
  "A link that was sent to you": "Un enlace que le enviaron",
  "Copy the link": "Copiar el enlace",
  "Job without a title": "Trabajo sin título",
  "Link copied. It holds the whole job in {count} characters.":
    "Enlace copiado. Contiene todo el trabajo en {count} caracteres.",
  "Link that holds “{name}”": "Enlace que contiene «{name}»",
  "Open the link": "Abrir el enlace",
  "Save as a file": "Guardar como archivo",
  "Send the link": "Enviar el enlace",
  "Send the open job": "Enviar el trabajo abierto",
  "The browser does not let the page copy. The link is marked; copy it by hand.":
    "El navegador no deja copiar. El enlace está marcado; cópielo a mano.",
  "The job is in the link itself. No server keeps it; whoever has the link can read it.":
    "El trabajo está en el propio enlace. Ningún servidor lo guarda; quien tenga el enlace puede leerlo.",
  "There is no job in this link.": "No hay trabajo en este enlace.",
  "This file cannot be read as JSON or YAML. {line}": "Este archivo no se lee como JSON o YAML. {line}",
  "This file holds no job. A job is a JSON or YAML file with water, spray and mix.":
    "Este archivo no contiene un trabajo. Un trabajo es un archivo JSON o YAML con water, spray y mix.",
  "This link was cut short or changed on its way. Ask for it again.":
    "Este enlace se cortó o cambió por el camino. Pídalo de nuevo.",
  "This link was made by a newer Hardstand. Bring this one up to date.":
    "Este enlace es de un Hardstand más nuevo. Actualice este.",
  "This page runs on this computer alone: the other side pastes the link into its own page, below.":
    "Esta página solo corre en este ordenador: la otra parte pega el enlace en su propia página, abajo.",
  "“{name}” came with the link and is open.": "«{name}» vino con el enlace y está abierto.",
  "“{name}” saved as a file. “Open file” opens it, here and elsewhere.":
    "«{name}» guardado como archivo. «Abrir archivo» lo abre, aquí y en otro sitio.",
};
