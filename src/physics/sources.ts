/** How sure a source is: read in a stored copy, confirmed through another author, or from memory. */
export type Confidence = 'read' | 'second-hand' | 'from memory' | 'common practice, no source' | 'derived';

export interface Source {
  readonly title: string;
  readonly confidence: Confidence;
}

/** The bibliography of the core. Every block of constants names one of these. */
export const sources = {
  'us-1976': {
    title: 'US Standard Atmosphere 1976 / ISO 2533, sea level and Sutherland viscosity',
    confidence: 'read',
  },
  'wmo-magnus': {
    title: 'Magnus form of the saturation vapour pressure, WMO; ideal gas for moist air',
    confidence: 'from memory',
  },
  'cipm-2007': {
    title: 'Picard, Davis, Glaser, Fujii, CIPM-2007, Metrologia 45 (2008) 149',
    confidence: 'second-hand',
  },
  charnock: {
    title: 'Charnock 1955: roughness of the sea; constant 0.011 for open sea as in IEC 61400-3 and DNV',
    confidence: 'from memory',
  },
  'iec-61400-3': {
    title: 'IEC 61400-3 edition 1, clause 6.3, eq. 3: power law, alpha 0.14',
    confidence: 'second-hand',
  },
  'round-bar-table': {
    title:
      'Smooth cylinder: NACA TN 84 (Wieselsberger 1921), Roshko 1961, DNV-RP-C205 2025-04, Achenbach 1968, Schewe 1983, Achenbach and Heinecke 1981, Jorgensen NASA TN D-6996, Delany and Sorensen NACA TN 3038, Cheng 2013, Sucker and Brauer 1975',
    confidence: 'second-hand',
  },
  'en-1991-1-4': {
    title: 'EN 1991-1-4:2005, clauses 7.9.2 and 7.13, figs 7.28 and 7.36, tables 7.13 and 7.16',
    confidence: 'second-hand',
  },
  'achenbach-1971': {
    title: 'Achenbach 1971, J. Fluid Mech. 46: critical Reynolds number of rough cylinders',
    confidence: 'from memory',
  },
  'bursnall-loftin-1951': {
    title: 'Bursnall and Loftin 1951, NACA TN 2463: yawed cylinder in the critical range',
    confidence: 'from memory',
  },
  'dnv-rp-c205': {
    title: 'DNV-RP-C205, edition 2025-04: reduction for finite length',
    confidence: 'second-hand',
  },
  'cross-flow': {
    title: 'Cross-flow principle (R. T. Jones; Hoerner; Gowen and Perkins 1953)',
    confidence: 'second-hand',
  },
  'fox-mcdonald': {
    title: 'Fox and McDonald, Introduction to Fluid Mechanics: Prandtl-Schlichting line',
    confidence: 'second-hand',
  },
  blasius: { title: 'Blasius: laminar plate friction', confidence: 'second-hand' },
  'cengel-cimbala': {
    title: 'Cengel and Cimbala, Fluid Mechanics, tables 11-1 and 11-2',
    confidence: 'second-hand',
  },
  'en-rectangles': {
    title: 'EN 1991-1-4:2005, clause 7.6, figs 7.23 and 7.24: rectangular sections and rounded corners',
    confidence: 'second-hand',
  },
  'dnv-plate': {
    title: 'DNV-RP-C205, reduction for finite length of a flat plate across the flow',
    confidence: 'from memory',
  },
  'ledger-practice': {
    title: 'Drag budgets of racing yachts: common practice',
    confidence: 'common practice, no source',
  },
  'vector-mechanics': {
    title: 'Force, moment and power of a rigid body, elementary mechanics',
    confidence: 'derived',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
