import { useEffect, useState } from 'react';

/** So long a value has to stand still, ms, before what rests on it is worked out anew. */
const settleMs = 150;

/** The value once it has come to rest: a slider on its way does not wait for what is not looked at meanwhile. */
export function useSettled<Value>(value: Value): Value {
  const [settled, setSettled] = useState({ value });
  useEffect(() => {
    const timer = setTimeout(() => {
      setSettled({ value });
    }, settleMs);
    return () => {
      clearTimeout(timer);
    };
  }, [value]);
  return settled.value;
}
