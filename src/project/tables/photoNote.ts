/** A photo's number stands at the head of a fitting's note, where people and the sheet find it again. */
const pattern = /^Photo (?!\s)((?:(?!\. )[^\n\r])*[^\s.])\.(?: ([^]*))?$/;

const mostCharacters = 60;

export interface PhotoAndNote {
  readonly photo: string;
  readonly note: string;
}

export function splitPhoto(note: string): PhotoAndNote {
  const match = pattern.exec(note);
  const photo = match?.[1] ?? '';
  if (photo === '' || photo.length > mostCharacters) return { photo: '', note };
  return { photo, note: match?.[2] ?? '' };
}

export function joinPhoto({ photo, note }: PhotoAndNote): string {
  if (photo === '') return note;
  return note === '' ? `Photo ${photo}.` : `Photo ${photo}. ${note}`;
}

/** What can stand before the note and be found again: one short line without a sentence's end in it. */
export function isPhoto(photo: string): boolean {
  return splitPhoto(joinPhoto({ photo, note: '' })).photo === photo;
}
