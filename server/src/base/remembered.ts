/**
 * Answers that depend on their question alone, kept for as long as they are few: the same words and sentences come again and again in one
 * library. Nobody can tell but by the time it takes.
 */
export class Remembered<Question, Answer> {
  readonly #answers = new Map<Question, Answer>();
  readonly #most: number;
  readonly #work: (question: Question) => Answer;

  constructor(most: number, work: (question: Question) => Answer) {
    this.#most = most;
    this.#work = work;
  }

  of(question: Question): Answer {
    const known = this.#answers.get(question);
    if (known !== undefined || this.#answers.has(question)) return known as Answer;
    const made = this.#work(question);
    if (this.#answers.size >= this.#most) this.#answers.clear();
    this.#answers.set(question, made);
    return made;
  }
}
