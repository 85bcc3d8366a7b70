import { useEffect, type SyntheticEvent } from 'react';

const formId = 'typing';

/**
 * A form of its own for the one field that is typed in. After each key a browser looks for what it could fill in next
 * time: through the form that the field stands in, or, where it stands in none, through every field of the page with
 * all choices of its lists, which takes milliseconds that the ledger needs. A field in another form stays there.
 */
export function TypingForm() {
  useEffect(() => {
    document.addEventListener('focusin', takeIn);
    document.addEventListener('focusout', letGo);
    return () => {
      document.removeEventListener('focusin', takeIn);
      document.removeEventListener('focusout', letGo);
    };
  }, []);
  return <form id={formId} hidden noValidate onSubmit={stay} />;
}

function takeIn({ target }: FocusEvent): void {
  if (isTypedIn(target) && target.form === null) target.setAttribute('form', formId);
}

function letGo({ target }: FocusEvent): void {
  if (isTypedIn(target) && target.getAttribute('form') === formId) target.removeAttribute('form');
}

function isTypedIn(target: EventTarget | null): target is HTMLInputElement | HTMLTextAreaElement {
  return target instanceof Element && target.matches('input:is([type="text"], [type="search"]), textarea');
}

/** Enter in the only field of a form sends it, and there is nowhere to send it to. */
function stay(event: SyntheticEvent): void {
  event.preventDefault();
}
