import { openFile } from './openFile';

const fieldId = 'file-choice';

/** Opens the browser's own choice of a file. */
export function askForFile(): void {
  document.getElementById(fieldId)?.click();
}

/** The way to a file on disk. */
export function FileChoice() {
  return (
    <label className="plain-action file-choice" title="Ctrl O">
      Open a file
      <input
        id={fieldId}
        type="file"
        className="visually-hidden"
        accept=".json,application/json"
        onChange={(event) => {
          const input = event.currentTarget;
          const [file] = input.files ?? [];
          if (file !== undefined) void openFile(file);
          // So that the same file, mended, can be chosen again.
          input.value = '';
        }}
      />
    </label>
  );
}
