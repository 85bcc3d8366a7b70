/** The page's id of the field with a zone's name, for what wants to lead there. */
export function zoneFieldId(zoneId: string): string {
  return `zone-name-${zoneId}`;
}
