import ts from 'typescript';

/** One numeric literal of a source file, by its place in the text. */
export interface Literal {
  /** Path from the root of the project, with forward slashes. */
  readonly file: string;
  readonly line: number;
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** The line it stands in, for people. */
  readonly context: string;
  /** Why it is left alone; null when it is to be multiplied. */
  readonly excluded: string | null;
}

/** What is multiplied with every constant in turn. */
const faultFactor = 1.1;

/** Names whose constants decide how a number is found or kept, not what it is. */
const methodNames: Readonly<Record<string, string>> = {
  mostKept: 'size of a cache',
  outlineSteps: 'fineness of an integration, which its test holds to a tolerance',
};

/** Files whose constants are of the method alone. */
const methodFiles: Readonly<Record<string, string>> = {
  'src/physics/numerics/gaussLegendre.ts':
    'start, stop and recurrence of a root search that ends at the same roots',
  'src/physics/numerics/crossings.ts': 'steps and tolerance of a search',
};

/** Every numeric literal of a file, those to be left alone with their reason. */
export function literalsOf(file: string, text: string): Literal[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const lines = text.split('\n');
  const found: Literal[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isNumericLiteral(node)) {
      const from = node.getStart(source);
      const { line } = source.getLineAndCharacterOfPosition(from);
      found.push({
        file,
        line: line + 1,
        from,
        to: node.getEnd(),
        text: node.getText(source),
        context: (lines[line] ?? '').trim(),
        excluded: methodFiles[file] ?? reasonToLeave(node),
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function reasonToLeave(node: ts.NumericLiteral): string | null {
  if (Number(node.text) === 0) return 'zero times anything is zero';
  for (let at: ts.Node = node; !ts.isSourceFile(at); at = at.parent) {
    const reason = structuralReason(at, at.parent);
    if (reason !== null) return reason;
  }
  return isGuard(node) ? 'keeps a logarithm or a quotient away from zero' : null;
}

function structuralReason(node: ts.Node, parent: ts.Node): string | null {
  if (ts.isLiteralTypeNode(parent)) return 'a type';
  if (ts.isElementAccessExpression(parent) && parent.argumentExpression === node) return 'place in a list';
  if (ts.isForStatement(parent) && parent.statement !== node) return 'bounds of a loop over a list';
  if (ts.isWhileStatement(parent) && parent.expression === node) return 'bounds of a search in a list';
  if (ts.isVariableDeclaration(parent) && ts.isIdentifier(parent.name)) {
    return methodNames[parent.name.text] ?? null;
  }
  return null;
}

/** `Math.max(x, 1e-3)` with so small a number that no fitting comes near it. */
function isGuard(node: ts.NumericLiteral): boolean {
  const call = node.parent;
  return (
    ts.isCallExpression(call) &&
    call.expression.getText() === 'Math.max' &&
    Math.abs(Number(node.text)) <= 1e-3
  );
}

/** The source with one constant multiplied. */
export function withFault(text: string, { from, to }: Pick<Literal, 'from' | 'to'>): string {
  const value = Number(text.slice(from, to).replaceAll('_', '')) * faultFactor;
  return `${text.slice(0, from)}${value}${text.slice(to)}`;
}

/** Every so many'th of all constants, counted on over the ends of files, and the middle one of a file stepped over. */
export function everyNth(literals: readonly Literal[], every: number): Literal[] {
  const chosen = new Set(literals.filter((_, index) => index % every === 0));
  const reached = new Set([...chosen].map(({ file }) => file));
  for (const file of new Set(literals.map((literal) => literal.file))) {
    const own = literals.filter((literal) => literal.file === file);
    const middle = own[Math.floor(own.length / 2)];
    if (!reached.has(file) && middle !== undefined) chosen.add(middle);
  }
  return literals.filter((literal) => chosen.has(literal));
}
