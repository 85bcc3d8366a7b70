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
  'hoerner-cables': {
    title: 'Hoerner, Fluid-Dynamic Drag (1965), p. 4-5: stranded cables',
    confidence: 'second-hand',
  },
  'rope-design-values': {
    title:
      'Design values for ropes 1.1 to 1.3; fine wire cables 1.2 and 0.9, thick 1.3 and 1.1 behind the crisis (wind codes)',
    confidence: 'from memory',
  },
  'hoerner-ellipse': {
    title:
      'Hoerner, Fluid-Dynamic Drag (1965), ch. 3 and 6: elliptical sections, 0.015 (1 + c/t) + 1.1 t/c laminar, C_f (4 + 2 c/t + 120 (t/c)^2) turbulent',
    confidence: 'from memory',
  },
  'white-ellipse': {
    title: 'White, Fluid Mechanics: elliptical cylinders 2:1, 4:1, 8:1, laminar and turbulent',
    confidence: 'from memory',
  },
  'flat-plate-2d': {
    title:
      'Two-dimensional plate across the flow: 1.98 (Hoerner, in Matthews), 2.0 (White 2016), 2.2 (Tian et al. 2014)',
    confidence: 'second-hand',
  },
  'sphere-curves': {
    title:
      'Spheres: Almedeij 2008; Clift, Grace and Weber 1978; Morrison 2013; Cheng 2009; Clift and Gauvin 1971 (formulas in public codes); Morsi and Alexander 1972 (their table in a public program)',
    confidence: 'second-hand',
  },
  'roos-willmarth-1971': {
    title:
      'Roos and Willmarth 1971, AIAA J. 9, 285: spheres and discs, Re 5 to 1.2e5, as tabulated in a public collection',
    confidence: 'second-hand',
  },
  'achenbach-1972': {
    title: 'Achenbach 1972, J. Fluid Mech. 54, 565: smooth sphere to Re 6e6',
    confidence: 'second-hand',
  },
  'achenbach-1974': {
    title: 'Achenbach 1974, J. Fluid Mech. 65, 113: rough spheres, abstract',
    confidence: 'read',
  },
  'porous-structures': {
    title: 'Richards and Robinson 1999, J. Wind Eng. Ind. Aerodyn. 83, 455: porous structures, abstract',
    confidence: 'read',
  },
  'taylor-screens': {
    title: 'G. I. Taylor 1944, ARC R&M 2236: screen in a free stream, K / (1 + K/4)^2',
    confidence: 'from memory',
  },
  'blevins-screens': {
    title: 'Blevins, Applied Fluid Dynamics Handbook (1984): loss of round-wire screens and open nets',
    confidence: 'second-hand',
  },
  'loland-nets': {
    title: 'Loland 1991 and Aarsnes et al. 1990: drag of net panels by solidity (formulas in public codes)',
    confidence: 'second-hand',
  },
  'tg20-netting': {
    title: 'TG20:13 design guide, tables 4.5 and 4.6: scaffold netting, sheeting and brick guards',
    confidence: 'read',
  },
  'student-t': {
    title: "Student's t distribution, 95 % quantile",
    confidence: 'from memory',
  },
  'data-book': {
    title: "Matthews, Aeronautical Engineer's Data Book, p. 95",
    confidence: 'read',
  },
  'white-2016': { title: 'White, Fluid Mechanics, 8th ed. (2016), table 7.2', confidence: 'second-hand' },
  'white-memory': { title: 'White, Fluid Mechanics, tables 7.2 and 7.3', confidence: 'from memory' },
  'sheldahl-klimas-1981': {
    title:
      'Sheldahl and Klimas, Aerodynamic Characteristics of Seven Symmetrical Airfoil Sections Through 180-Degree Angle of Attack, SAND80-2114 (1981)',
    confidence: 'second-hand',
  },
  'hoerner-sections': {
    title:
      'Hoerner, Fluid-Dynamic Drag (1965), ch. 6: profile drag of symmetric sections; the laminar and the aft-thickness form from memory',
    confidence: 'second-hand',
  },
  'naca-four-digit': {
    title: 'NACA four-digit thickness distribution (Jacobs, Ward and Pinkerton, NACA Report 460, 1933)',
    confidence: 'from memory',
  },
  'prandtl-lifting-line': {
    title: 'Prandtl, lifting line: induced angle and induced drag with span efficiency e',
    confidence: 'from memory',
  },
  'critzos-1955': {
    title: 'Critzos, Heyson and Boswinkle, NACA TN 3361 (1955): NACA 0012 from 0 to 180 deg (summary)',
    confidence: 'read',
  },
  'abbott-doenhoff': {
    title: 'Abbott and von Doenhoff, Theory of Wing Sections: lift of NACA 0012, Re 6e6, digitised by NASA',
    confidence: 'second-hand',
  },
  'ladson-1988': {
    title: 'Ladson, NASA TM 4074 (1988): NACA 0012 with transition tripped',
    confidence: 'second-hand',
  },
  'viterna-corrigan': {
    title:
      'Viterna and Corrigan, NASA CP-2230 (1981), as printed in Viterna and Janetzke, NASA TM-82944 (1982): lift and drag after the stall',
    confidence: 'second-hand',
  },
  'euler-1744': {
    title:
      'Euler 1744: load of a slender column with pinned ends, pi^2 E I / L^2 (any text on strength of materials)',
    confidence: 'from memory',
  },
  'green-theorem': {
    title:
      "Area and its moments from a boundary by Green's theorem; wall of constant thickness by a parallel curve",
    confidence: 'derived',
  },
  'strut-practice': {
    title: 'Tubes as struts: wall not under a fiftieth of the diameter, no flat sides',
    confidence: 'common practice, no source',
  },
  'en-1999-1-1': {
    title: 'EN 1999-1-1: aluminium, E 70 GPa, 2700 kg/m3; EN AW-6082 T6 extruded, 250 to 260 MPa',
    confidence: 'from memory',
  },
  'en-1993-1-4': {
    title:
      'EN 1993-1-4: stainless steel 1.4401 and 1.4404, E 200 GPa, 220 to 240 MPa; 8000 kg/m3 (EN 10088-1)',
    confidence: 'from memory',
  },
  'titanium-handbooks': {
    title: 'Titanium Ti-6Al-4V, annealed: E 114 GPa, 4430 kg/m3, 830 MPa (data sheets)',
    confidence: 'from memory',
  },
  'carbon-tubes': {
    title: 'Carbon-epoxy tubes with most fibres along: E 60 to 130 GPa, 1500 to 1600 kg/m3',
    confidence: 'common practice, no source',
  },
  'thomson-beams': {
    title:
      'Thomson, Theory of Vibration with Applications, table 9.5-1 and appendix D: first frequencies of uniform beams',
    confidence: 'read',
  },
  'stretched-string': {
    title: 'Stretched string: 1/(2 L) sqrt(T/m) (any text on acoustics)',
    confidence: 'from memory',
  },
  'strouhal-cylinder': {
    title:
      'Vortex shedding of a round cylinder: St 0.2 (from memory); St 0.198 (1 - 19.7/Re), 250 < Re < 2e5, in public codes',
    confidence: 'second-hand',
  },
  'dnv-lock-in': {
    title: 'DNV-RP-C205, ch. 9: lock-in at a reduced velocity of 4 to 8',
    confidence: 'from memory',
  },
  'thin-aerofoil': {
    title: 'Thin symmetric section: aerodynamic centre at a quarter of the chord (any text on aerofoils)',
    confidence: 'from memory',
  },
  'turning-practice': {
    title:
      'Turning fairings and control surfaces: pivot ahead of the aerodynamic centre, mass balanced to the pivot',
    confidence: 'common practice, no source',
  },
  'aluminium-expansion': {
    title:
      'Thermal expansion of aluminium 23e-6 per kelvin, of carbon tubes along the fibre about none (handbooks)',
    confidence: 'from memory',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
