/** Most entries of the lists. */
export const limits = {
  zones: 200,
  fittings: 2000,
  members: 20_000,
  conditions: 100,
  plans: 50,
  items: 200,
  sources: 500,
  deckStations: 200,
  /** Of a section that turns with the wind, each member. */
  pieces: 50,
  /** Of a pull test. */
  readings: 200,
} as const;
