/** "1 is", "2 are". */
export const are = (count: number): string => `${count} ${count === 1 ? "is" : "are"}`;
