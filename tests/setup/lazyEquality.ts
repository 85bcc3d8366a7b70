import { expect } from 'vitest';

/**
 * Ranges, doubts and workings are worked out by getters of classes when they are read. A plain comparison sees none of
 * them and would call any two of a class equal: this one reads them first.
 */
function areSameWhenRead(this: { equals: EqualsOf }, a: unknown, b: unknown): boolean | undefined {
  const [readA, readB] = [readOut(a), readOut(b)];
  if (readA === null && readB === null) return undefined;
  return this.equals(readA ?? a, readB ?? b, [areSameWhenRead]);
}

type EqualsOf = (a: unknown, b: unknown, testers: (typeof areSameWhenRead)[]) => boolean;

/** An object of a class of ours with what its getters answer, as a plain object; null for anything else. */
function readOut(value: unknown): Record<string, unknown> | null {
  if (typeof value !== 'object' || value === null || isOfThePage(value)) return null;
  const getters = gettersOf(prototypeOf(value));
  if (getters.length === 0) return null;
  const read = getters.map((name) => [name, (value as Record<string, unknown>)[name]] as const);
  return { ...value, ...Object.fromEntries(read) };
}

function isOfThePage(value: object): boolean {
  return typeof Node !== 'undefined' && value instanceof Node;
}

function gettersOf(prototype: object | null): string[] {
  if (prototype === null || prototype === Object.prototype || isNative(prototype)) return [];
  const own = Object.getOwnPropertyNames(prototype).filter(
    (name) => Object.getOwnPropertyDescriptor(prototype, name)?.get !== undefined,
  );
  return [...own, ...gettersOf(prototypeOf(prototype))];
}

function prototypeOf(value: object): object | null {
  return Object.getPrototypeOf(value) as object | null;
}

function isNative({ constructor }: object): boolean {
  return constructor.toString().includes('[native code]');
}

expect.addEqualityTesters([areSameWhenRead]);
