/** What one language has to say offline. */
export interface Tongue {
  /** Of answers, by the path of what they answer. */
  words: object;
  /** Of scenes that are refused. */
  problems: object;
}
