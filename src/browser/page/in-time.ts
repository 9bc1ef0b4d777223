/** Waiting for a database that may never answer. */

/**
 * Settles as the promise does, or rejects when it has not done so within so many seconds. They are counted one by one: a
 * device that slept meanwhile has waited for one second at the most, and its database gets the time to answer.
 */
export function inTime<Value>(promise: Promise<Value>, seconds: number): Promise<Value> {
  return new Promise((resolve, reject) => {
    let left = seconds;
    const clock = setInterval(() => {
      left--;
      if (left <= 0) end(() => reject(new DOMException("no answer", "TimeoutError")));
    }, 1000);
    const end = (settle: () => void): void => {
      clearInterval(clock);
      settle();
    };
    promise.then(
      (value) => end(() => resolve(value)),
      (cause: unknown) => end(() => reject(cause)),
    );
  });
}
