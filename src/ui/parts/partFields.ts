import type { FieldTie } from '../useFormEdit';

/** What the fields of one part of the project need: the part, and the way back. */
export interface PartFields<Part> {
  readonly value: Part;
  /** @param field the path within the part, such as "row.count". */
  readonly at: (field: string) => FieldTie;
  /** @param words what is edited, for the name of the step: "diameter". */
  readonly onChange: (field: string, words: string, next: Part) => void;
}

/** A form that sets some of the properties of what it is about. */
interface PatchForm<Patch> {
  readonly at: (field: string) => FieldTie;
  readonly patch: (field: string, words: string, patch: Patch) => void;
}

/** The fields of a part of what a form is about. */
export function partOf<Part, Patch>(
  form: PatchForm<Patch>,
  path: string,
  value: Part,
  asPatch: (next: Part) => NoInfer<Patch>,
): PartFields<Part> {
  return {
    value,
    at: (field) => form.at(joined(path, field)),
    onChange: (field, words, next) => {
      form.patch(joined(path, field), words, asPatch(next));
    },
  };
}

/** The fields of a part of a part. */
export function inside<Whole, Part>(
  whole: PartFields<Whole>,
  path: string,
  value: Part,
  put: (next: Part) => Whole,
): PartFields<Part> {
  return {
    value,
    at: (field) => whole.at(joined(path, field)),
    onChange: (field, words, next) => {
      whole.onChange(joined(path, field), words, put(next));
    },
  };
}

function joined(path: string, field: string): string {
  return [path, field].filter((step) => step !== '').join('.');
}
