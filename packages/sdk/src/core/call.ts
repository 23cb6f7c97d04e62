import type { Call, ResponseMeta } from "./types.js";

/** What came of a call. */
export interface Done<T> {
  data: T;
  meta: ResponseMeta;
}

/** Makes a call of work that is under way. */
export function callOf<T>(work: Promise<Done<T>>): Call<T> {
  const data = work.then((done) => done.data);
  return Object.assign(data, {
    withResponse: () => {
      // Whoever asks for both hears of a failure once, through the promise below.
      data.catch(() => undefined);
      return work.then((done) => done);
    },
  });
}
