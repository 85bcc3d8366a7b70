import fc from 'fast-check';

/** Whether a property fails is all that a run with a fault asks: the smallest case that fails is not looked for. */
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true });
