/** The browser's cache as far as the worker uses it, in memory; without `ignoreVary` it heeds `Vary: Origin`. */
export class FakeCaches {
  readonly stores = new Map<string, FakeCache>();

  keys(): Promise<string[]> {
    return Promise.resolve([...this.stores.keys()]);
  }

  has(name: string): Promise<boolean> {
    return Promise.resolve(this.stores.has(name));
  }

  open(name: string): Promise<FakeCache> {
    const store = this.stores.get(name) ?? new FakeCache();
    this.stores.set(name, store);
    return Promise.resolve(store);
  }

  delete(name: string): Promise<boolean> {
    return Promise.resolve(this.stores.delete(name));
  }
}

class FakeCache {
  readonly entries = new Map<string, Response>();

  match(address: string, options?: CacheQueryOptions): Promise<Response | undefined> {
    const found = this.entries.get(address);
    const isVaried = found?.headers.has('vary') === true && options?.ignoreVary !== true;
    return Promise.resolve(isVaried ? undefined : found?.clone());
  }

  put(address: string, response: Response): Promise<void> {
    if (response.bodyUsed) return Promise.reject(new TypeError('the body was read'));
    this.entries.set(address, response);
    return Promise.resolve();
  }
}
