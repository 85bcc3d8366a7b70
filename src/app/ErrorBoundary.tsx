import { Component, type ReactNode } from 'react';

interface ErrorBoundaryProps {
  readonly children: ReactNode;
}

interface ErrorBoundaryState {
  readonly message: string | null;
}

/** Catches what the page itself gets wrong. React has no other form for this than a class. */
export class ErrorBoundary extends Component<ErrorBoundaryProps, ErrorBoundaryState> {
  override state: ErrorBoundaryState = { message: null };

  static getDerivedStateFromError(thrown: unknown): ErrorBoundaryState {
    return { message: thrown instanceof Error ? thrown.message : String(thrown) };
  }

  override render() {
    const { message } = this.state;
    if (message === null) return this.props.children;
    return (
      <main className="crash">
        <h1>Windtoll met an error of its own and stopped drawing.</h1>
        <p>
          Your file on disk is untouched, and what you changed is saved in this browser. Reload the page to go
          on; if it happens again with the same project, this is what to report: {message}
        </p>
        <button
          type="button"
          className="plain-action"
          onClick={() => {
            window.location.reload();
          }}
        >
          Reload the page
        </button>
      </main>
    );
  }
}
