/** The promise's answer, or a rejection when it has not come in so long. What comes later is of no interest. */
export function inTime<T>(asked: Promise<T>, ms: number): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('no answer in time')), ms);
    asked.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
