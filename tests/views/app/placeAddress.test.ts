import { describe, expect, it } from 'vitest';
import { placeAddress, placeFrom } from '../../../src/app/placeAddress';

describe('the address of a place', () => {
  it.each([
    ['', ''],
    ['speed=12+m%2Fs&count=16', 'speed=12+m%2Fs&count=16'],
    ['a=%26place%3Dledger', 'a=%26place%3Dledger'],
  ])('leads back to the place with its words: %s', (words, expected) => {
    expect(placeFrom(placeAddress('envelope', words))).toEqual({ place: 'envelope', words: expected });
  });

  it.each(['', '#', '#over=course&plan=', '#place=moon&x=1', '#place=envelopes', '#x=1&place=envelope'])(
    'leads to the ledger where no known place is asked for: %s',
    (hash) => {
      expect(placeFrom(hash)).toEqual({ place: 'ledger', words: '' });
    },
  );
});
