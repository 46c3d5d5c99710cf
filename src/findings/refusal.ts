/**
 * A refusal: the work cannot be done at all (an unreadable file, a bad argument, a full disk). It carries
 * a sentence and a remedy, is caught in `cli`, and ends the program with status 2. What is wrong *with a
 * plan* is a finding, never a refusal.
 */
export class Refusal extends Error {
  readonly remedy: string | undefined;

  constructor(message: string, remedy?: string) {
    super(message);
    this.name = 'Refusal';
    this.remedy = remedy;
  }
}
