/** What a text is, for the browser. */
type TextKind = 'application/json' | 'text/csv;charset=utf-8';

/** Hands a text to the browser as a file. Needs no storage. */
export function downloadText(fileName: string, text: string, kind: TextKind = 'application/json'): void {
  downloadBlob(fileName, new Blob([text], { type: kind }));
}

/** The same for anything else. */
export function downloadBlob(fileName: string, blob: Blob): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // Some browsers fetch the file only after the click has been handled.
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 60_000);
}
