/** How far into a file its head may stand [bytes]: what a mail program puts before it is passed over, as readers do. */
const HEAD_BYTES = 1024;

/** Whether a laboratory's file is a PDF, which is read by other means than text. Needs none of what reads it. */
export function isPdf(bytes: Uint8Array): boolean {
  return String.fromCharCode(...bytes.subarray(0, HEAD_BYTES)).includes("%PDF-");
}
