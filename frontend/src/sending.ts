/**
 * Sends what is typed, one state at a time: the next is sent once the one before has arrived, and a state that does not
 * arrive is sent again. Every state is whole, so that sending one twice does no harm. Knows no page and no clock.
 */
export class Sending<S> {
  private revision = 0;
  private outstanding: number | undefined;
  private unsent: S | undefined;
  private sent: S | undefined;

  /** @param send hands a state over, with the number by which its arrival is told */
  constructor(private readonly send: (state: S, revision: number) => void) {}

  /** Takes a new state; it is sent at once where nothing is on its way. */
  put(state: S): void {
    this.unsent = state;
    this.go();
  }

  /** Is told that the state of this number, and all before it, have arrived. */
  arrived(revision: number): void {
    if (this.outstanding !== undefined && revision >= this.outstanding) {
      this.outstanding = undefined;
      this.sent = undefined;
      this.go();
    }
  }

  /** Sends again what has not arrived. */
  again(): void {
    if (this.outstanding !== undefined) {
      this.outstanding = undefined;
      this.unsent ??= this.sent;
      this.go();
    }
  }

  /** Whether everything that was put has arrived. */
  get isSettled(): boolean {
    return this.outstanding === undefined && this.unsent === undefined;
  }

  private go(): void {
    if (this.outstanding === undefined && this.unsent !== undefined) {
      const state = this.unsent;
      this.unsent = undefined;
      this.sent = state;
      this.outstanding = ++this.revision;
      this.send(state, this.outstanding);
    }
  }
}
