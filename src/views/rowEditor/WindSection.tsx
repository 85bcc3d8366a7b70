import type { Project } from '../../project/file/schema';
import { partOf } from '../../ui/parts/partFields';
import { ShelterFields } from '../../ui/parts/ShelterFields';
import { DegreesField } from '../../ui/parts/smallFields';
import { Section } from '../../ui/Section';
import type { RowEdit } from './useRowEdit';
import { SourceField } from '../../ui/parts/SourceField';

/** How much of the free apparent wind reaches the fitting, and from where. */
export function WindSection({ row, project }: { readonly row: RowEdit; readonly project: Project }) {
  const { id, exposure, exposureLeeward, localTurn, shelteredByFittingId } = row.fitting;
  const shelter = { exposure, exposureLeeward, shelteredByFittingId };
  return (
    <Section head="Wind that reaches it">
      <ShelterFields
        {...partOf(row, '', shelter, (next) => next)}
        others={project.fittings.filter((other) => other.id !== id)}
      />
      <DegreesField
        label="Local turn of the wind"
        valueDeg={localTurn.deg}
        mostDeg={90}
        onCommit={(deg) => {
          row.patch('localTurn.deg', 'local turn', { localTurn: { deg } });
        }}
        {...row.at('localTurn.deg')}
      />
      {(localTurn.deg !== 0 || localTurn.source !== '') && (
        <SourceField
          label="Source of the turn"
          value={localTurn.source}
          onCommit={(source) => {
            row.patch('localTurn.source', 'source of the turn', { localTurn: { source } });
          }}
          {...row.at('localTurn.source')}
        />
      )}
    </Section>
  );
}
