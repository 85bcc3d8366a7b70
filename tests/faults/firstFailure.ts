import fc from 'fast-check';
import { isQuickRun } from './quickRun';

/**
 * Whether a property fails is all that a run with a fault asks: the smallest case that fails is not looked for. A quick run
 * draws cases for a fifth of a second, which can only count too many survivors.
 */
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true });
if (isQuickRun()) fc.installGlobalPlugin(fc.interruptAfterTimeLimit(200));
