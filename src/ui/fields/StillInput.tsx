import {
  memo,
  useLayoutEffect,
  useRef,
  useState,
  type ComponentProps,
  type ChangeEvent,
  type FocusEvent,
  type KeyboardEvent,
} from 'react';

type InputProps = ComponentProps<'input'>;

type Handlers = Pick<InputProps, 'onChange' | 'onFocus' | 'onBlur' | 'onKeyDown'>;

/**
 * An input that is left alone while nothing about it changes but the functions that it calls: React writes name and type
 * of an input anew whenever it draws it, and an edit draws every field of a pane.
 */
export function StillInput({ onChange, onFocus, onBlur, onKeyDown, ...rest }: InputProps) {
  const handlers = { onChange, onFocus, onBlur, onKeyDown };
  return <DrawnInput {...rest} {...useStill(handlers)} />;
}

const DrawnInput = memo(function DrawnInput(props: InputProps) {
  return <input {...props} />;
});

/** Handlers that stay the same functions, each calling the one of the last drawing. */
function useStill(handlers: Handlers): Handlers {
  const latest = useRef(handlers);
  useLayoutEffect(() => {
    latest.current = handlers;
  });
  const [still] = useState((): Handlers => ({
    onChange: (event: ChangeEvent<HTMLInputElement>) => latest.current.onChange?.(event),
    onFocus: (event: FocusEvent<HTMLInputElement>) => latest.current.onFocus?.(event),
    onBlur: (event: FocusEvent<HTMLInputElement>) => latest.current.onBlur?.(event),
    onKeyDown: (event: KeyboardEvent<HTMLInputElement>) => latest.current.onKeyDown?.(event),
  }));
  return still;
}
