/** The precedence graph as data: which step must come before which, and why. */

/** `first` must come before `then`. `because` holds every reason, in words; at least one. */
export interface Pair {
  readonly first: string;
  readonly then: string;
  readonly because: readonly string[];
  readonly critical: boolean;
}

/**
 * A precedence graph. `steps` gives the step order, by which lists are sorted; each id once. `pairs` may be any set of
 * pairs over `steps` (not reduced, not closed) whose transitive closure is free of cycles.
 */
export interface Precedence {
  readonly steps: readonly string[];
  readonly pairs: readonly Pair[];
}
