export { PDF_PROBLEMS, pdfProblemWords } from "./problem-words.ts";
export { MOST_PAGES, readPdf } from "./read-pdf.ts";
export type { PdfProblem, PdfRead } from "./read-pdf.ts";
