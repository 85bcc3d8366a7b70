/**
 * What is used of papaparse 5.7.1, in this project's own words: the published types bring Node's names into rooms that only
 * calculate.
 */
declare module 'papaparse' {
  interface ParseError {
    /** 'Quotes', 'Delimiter' or 'FieldMismatch'. */
    readonly type: string;
    readonly code: string;
    readonly row?: number;
  }

  interface ParseResult {
    readonly data: readonly (readonly string[])[];
    readonly errors: readonly ParseError[];
  }

  interface ParseConfig {
    readonly delimiter: string;
    readonly quoteChar?: string;
    /** Most records that are read; 0 for all. */
    readonly preview?: number;
  }

  const papaparse: { readonly parse: (text: string, config: ParseConfig) => ParseResult };
  export default papaparse;
}
