/** Service workers for Node, as far as the page sees them: events that a test lets happen. */

export class FakeWorker extends EventTarget {
  state = 'installing';
  readonly asked: unknown[] = [];

  postMessage(message: unknown): void {
    this.asked.push(message);
  }

  becomes(state: string): void {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

class FakeRegistration extends EventTarget {
  installing: FakeWorker | null = null;
  waiting: FakeWorker | null = null;
  active: FakeWorker | null = null;
}

export class FakeContainer extends EventTarget {
  readonly registration = new FakeRegistration();
  controller: FakeWorker | null = null;
  ready: Promise<unknown> = Promise.resolve();

  register(): Promise<unknown> {
    return Promise.resolve(this.registration);
  }

  /** A version is found and begins to install. */
  finds(): FakeWorker {
    const worker = new FakeWorker();
    this.registration.installing = worker;
    this.registration.dispatchEvent(new Event('updatefound'));
    return worker;
  }
}
