/** The page's id of a condition's field, so that a line elsewhere can ask for it by its path. */
export function fieldId(path: string): string {
  return `condition-${path}`;
}
