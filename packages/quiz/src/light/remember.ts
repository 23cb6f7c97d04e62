/** The same function with a memory: for questions that come from a finite grid, as nothing is ever forgotten. */
export function remembered<Question extends readonly (object | string | number)[], Answer>(
  ask: (...question: Question) => Answer,
): (...question: Question) => Answer {
  const known = new Map<string, Answer>();
  return (...question) => {
    const key = JSON.stringify(question);
    const found = known.get(key);
    if (found !== undefined) return found;
    const answer = ask(...question);
    known.set(key, answer);
    return answer;
  };
}
