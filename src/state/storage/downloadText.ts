/** Hands a text to the browser as a file. Needs no storage. */
export function downloadText(fileName: string, text: string): void {
  downloadBlob(fileName, new Blob([text], { type: 'application/json' }));
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
