/**
 * What the worker uses of the browser. TypeScript's own types for workers contradict those of the page, which the rest
 * of the browser's code is compiled with.
 */
export interface WorkerScope {
  readonly location: Location;
  readonly caches: CacheStorage;
  readonly registration: ServiceWorkerRegistration;
  readonly clients: {
    matchAll(options: {
      readonly type: 'window';
      readonly includeUncontrolled: true;
    }): Promise<readonly WorkerClient[]>;
    claim(): Promise<void>;
  };
  fetch(address: string, options?: RequestInit): Promise<Response>;
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: LifeEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: FetchEvent) => void): void;
  addEventListener(type: 'message', listener: (event: LifeEvent & { readonly data: unknown }) => void): void;
}

interface WorkerClient {
  readonly id: string;
  readonly url: string;
}

interface LifeEvent {
  waitUntil(work: Promise<unknown>): void;
}

interface FetchEvent extends LifeEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
