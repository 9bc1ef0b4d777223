/** Work is not done twice while what it is done on, and what it is done with, are the same objects. */

/**
 * `make`, remembering the last outcome for each key as long as the key lives. `make` must be a function of what it
 * is given and nothing else.
 */
export function remembered<Key extends object, With extends readonly unknown[], Made>(
  make: (key: Key, ...others: With) => Made,
): (key: Key, ...others: With) => Made {
  const known = new WeakMap<Key, { readonly others: With; readonly made: Made }>();
  return (key, ...others) => {
    const before = known.get(key);
    if (before?.others.every((other, index) => other === others[index])) return before.made;
    const made = make(key, ...others);
    known.set(key, { others, made });
    return made;
  };
}
