import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { TypingForm } from '../../../src/app/TypingForm';

beforeEach(() => {
  render(
    <>
      <input type="text" aria-label="Width" required />
      <textarea aria-label="Note" />
      <input type="radio" aria-label="Round" />
      <form id="other">
        <input type="text" aria-label="Name" />
      </form>
      <TypingForm />
    </>,
  );
});
afterEach(cleanup);

function field(label: string): HTMLInputElement {
  return screen.getByLabelText(label);
}

it('a browser that looks through the form of the field in hand finds no other field there', () => {
  for (const label of ['Width', 'Note']) {
    field(label).focus();
    expect([...(field(label).form?.elements ?? [])]).toEqual([field(label)]);
  }
});

it('a field that was left, a choice and a field of another form stay where they are', () => {
  field('Width').focus();
  for (const label of ['Round', 'Name']) field(label).focus();
  expect(['Width', 'Round', 'Name'].map((label) => field(label).form?.id)).toEqual([
    undefined,
    undefined,
    'other',
  ]);
});

it('nothing is sent', () => {
  field('Width').focus();
  const form = field('Width').form as HTMLFormElement;
  expect(form.noValidate).toBe(true);
  expect(fireEvent.submit(form)).toBe(false);
});
