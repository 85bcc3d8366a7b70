/**
 * What every ledger, screen and brief says beside its numbers, shortest form. The standards are named so that a reader
 * can look them up; the tool replaces none of them.
 */
export const cautions = [
  'Preliminary estimate. Local codes, class rules and licensed practice decide.',
  'Stanchions, guard wires, pulpits, jackstays, handholds and navigation lights keep people safe; the rules for offshore racing and ISO 15085:2024 govern them, and no watt is worth a life. What a plan takes from a safety-required fitting stays out of every total until a named person has given a reason.',
  'Structural: a changed rig or spar needs a licensed engineer and the word of the class (ISO 12215-10).',
  'Class rules: the ruling and its number are what the user typed; ask the class.',
  'Moving parts can jam.',
] as const;
