import { useAppStore } from '../state/appStore';
import { openFile } from './openFile';

interface FileActionsProps {
  readonly isDemoOpen: boolean;
  readonly onOpenDemo: () => void;
}

/** The name of what is open, and the ways to open something else. */
export function FileActions({ isDemoOpen, onOpenDemo }: FileActionsProps) {
  const fileName = useAppStore((state) => state.fileName);
  return (
    <div className="file-actions">
      <span className="file-name muted" title={fileName}>
        {isDemoOpen ? 'the demo, an invented boat' : fileName}
      </span>
      {!isDemoOpen && (
        <button type="button" className="plain-action" onClick={onOpenDemo}>
          Open the demo
        </button>
      )}
      <label className="plain-action file-choice">
        Open a file
        <input
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
    </div>
  );
}
