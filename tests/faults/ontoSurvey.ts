import type { FaultSurvey, FileSurvey, Finding } from './survey';

function survivorsOf(survey: FaultSurvey, { file }: FileSurvey): Finding[] {
  return survey.survivors.filter((survivor) => survivor.file === file);
}

interface Entry {
  readonly file: FileSurvey;
  readonly survivors: readonly Finding[];
}

/**
 * Of a file whose text is the same, fewer tries than are kept add nothing to the count: which constants were noticed is not
 * kept, so that they may be among those. They can only take a survivor away or bring one.
 */
function amended(kept: Entry, survivors: readonly Finding[], triedFrom: ReadonlySet<number>): Entry {
  const left = [...kept.survivors.filter(({ from }) => !triedFrom.has(from)), ...survivors].sort(
    (a, b) => a.from - b.from,
  );
  return { file: { ...kept.file, noticed: kept.file.tried - left.length }, survivors: left };
}

/**
 * What was tried now, laid onto the survey that is kept. A file of which nothing was tried now stands as it was kept, with the
 * hash of the text that was tried then; one that was tried anew takes its place, unless `amended` says otherwise. What is
 * kept of files that are no more is dropped.
 */
export function ontoSurvey(kept: FaultSurvey, now: FaultSurvey, tried: readonly Finding[]): FaultSurvey {
  const entries = now.files.map((file): Entry => {
    const found: Entry = { file, survivors: survivorsOf(now, file) };
    const known = kept.files.find((candidate) => candidate.file === file.file);
    if (known === undefined) return found;
    const before: Entry = { file: known, survivors: survivorsOf(kept, known) };
    if (file.tried === 0) return known.tried === 0 ? found : before;
    if (known.hash !== file.hash || file.tried >= known.tried) return found;
    const places = tried.filter((finding) => finding.file === file.file).map(({ from }) => from);
    return amended(before, found.survivors, new Set(places));
  });
  return {
    files: entries.map(({ file }) => file),
    survivors: entries.flatMap(({ survivors }) => survivors),
  };
}
