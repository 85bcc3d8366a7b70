import { useEffect, useRef, useState, type FocusEvent, type KeyboardEvent } from 'react';
import { patchFitting } from '../../project/edit/fittingEdits';
import type { Patch } from '../../project/edit/patch';
import type { ProjectDimension, ProjectFitting } from '../../project/file/schema';
import { isMember } from '../../project/file/shapeKinds';
import { useAppStore } from '../../state/appStore';
import { QuantityField } from '../../ui/fields/QuantityField';
import { TextField } from '../../ui/fields/TextField';

export interface RowInPlaceProps {
  readonly fitting: ProjectFitting;
  /** Enter, Escape, or the focus went elsewhere; true when it is to go back to the row. */
  readonly onClose: (returnsToRow: boolean) => void;
}

/** What the file takes as a size, m. */
const sizeRange = { fromSi: 0.0001, toSi: 200 };

/** Name and size in the row itself. */
export function RowInPlace({ fitting, onClose }: RowInPlaceProps) {
  const place = useRef<HTMLSpanElement>(null);
  const [complaint, setComplaint] = useState({ field: '', message: '' });
  useEffect(() => {
    const first = place.current?.querySelector<HTMLInputElement>('.field-input');
    first?.focus();
    first?.select();
  }, []);
  const change = (field: string, words: string, patch: Patch<Omit<ProjectFitting, 'id'>>): void => {
    const answer = useAppStore
      .getState()
      .edit(`Change the ${words} of ${fitting.name}`, (project) => patchFitting(project, fitting.id, patch), {
        group: `${fitting.id}.${field}`,
      });
    setComplaint({ field, message: 'refused' in answer ? `Not taken: ${answer.refused.message}.` : '' });
  };
  const errorOf = (field: string): string | undefined =>
    complaint.field === field && complaint.message !== '' ? complaint.message : undefined;
  const typedFor = (field: string): string => `fitting/${fitting.id}.${field}`;
  const onKeyDown = (event: KeyboardEvent) => {
    // The row's own keys (d, x, Delete) are letters here.
    event.stopPropagation();
    const isWrong = (event.target as HTMLElement).getAttribute('aria-invalid') === 'true';
    if (event.key === 'Enter' && !event.defaultPrevented && !isWrong) onClose(true);
    if (event.key === 'Escape') onClose(true);
  };
  const onBlur = (event: FocusEvent) => {
    if (!event.currentTarget.contains(event.relatedTarget)) onClose(false);
  };
  return (
    <span
      className="in-place"
      ref={place}
      onKeyDown={onKeyDown}
      onBlur={onBlur}
      onClick={(event) => {
        event.stopPropagation();
      }}
    >
      <TextField
        label={`Name of ${fitting.name}`}
        labelHidden
        kind="name"
        typedFor={typedFor('name')}
        value={fitting.name}
        error={errorOf('name')}
        onCommit={(name) => {
          change('name', 'name', { name });
        }}
        onDone={endGroup}
      />
      {sizesOf(fitting).map(({ field, words, unit, size, patch }) => (
        <QuantityField
          key={field}
          typedFor={typedFor(field)}
          label={capital(words)}
          labelHidden
          dimension="length"
          unit={unit}
          range={sizeRange}
          valueSi={size.m}
          error={errorOf(field)}
          onCommit={(m) => {
            change(field, words, patch({ ...size, m }));
          }}
          onDone={endGroup}
        />
      ))}
    </span>
  );
}

type SizePatch = Patch<Omit<ProjectFitting, 'id'>>;

interface Size {
  readonly field: string;
  readonly words: string;
  readonly unit: 'mm' | 'm';
  readonly size: ProjectDimension;
  readonly patch: (size: ProjectDimension) => SizePatch;
}

const sizeKeys = ['diameter', 'chord', 'thickness', 'length', 'width', 'height'] as const;

/** What is measured of a shape; a measured area has its three numbers in the editor. */
function sizesOf({ shape }: ProjectFitting): Size[] {
  return sizeKeys.flatMap((key) => {
    const size = (shape as Partial<Record<typeof key, ProjectDimension>>)[key];
    if (size === undefined) return [];
    const patch = (next: ProjectDimension) => ({ shape: { kind: shape.kind, [key]: next } }) as SizePatch;
    return [{ field: `shape.${key}`, words: key, unit: isMember(shape) ? 'mm' : 'm', size, patch }];
  });
}

function endGroup(): void {
  useAppStore.getState().endGroup();
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
