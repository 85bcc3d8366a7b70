import { currentVersion } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { KeepAction, KeepLine } from './KeepLine';
import { dismissFinding, type Finding } from './keeping';

interface OlderLineProps {
  readonly finding: Extract<Finding, { kind: 'older' }>;
}

/** That the opened file is of an older version of the format, and what became of it. */
export function OlderLine({ finding }: OlderLineProps) {
  const { fileName, opening } = finding;
  const isOpen = useAppStore((state) => state.opening === opening);
  if (!isOpen) return null;
  return (
    <KeepLine
      isQuiet
      words={
        <>
          “<bdi>{fileName}</bdi>” opened. It was written in version {opening.upgradedFrom} of the file format
          and has been brought to version {currentVersion}: no number of it was changed, and what the older
          version took for granted is now written down. The file on the disk stays as it is.
        </>
      }
    >
      <KeepAction
        words="Dismiss"
        onAct={() => {
          dismissFinding(finding);
        }}
      />
    </KeepLine>
  );
}
